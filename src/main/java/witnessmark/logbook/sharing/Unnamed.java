package witnessmark.logbook.sharing;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseTest;
import witnessmark.domain.CostLine;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Incident;
import witnessmark.domain.Person;
import witnessmark.domain.Photo;
import witnessmark.domain.SentOut;
import witnessmark.domain.Team;

/**
 * Takes the names a logbook knows out of a text and puts letters in their place, the same letter for the same name; and every
 * amount of money. A name nobody wrote down as one is not known here: whoever shares words looks at them first.
 */
public final class Unnamed {
    /** Whom or what a name is of. */
    public enum Who {
        TEAM,
        PERSON,
        CUSTOMER,
        FIRM,
        EVENT,
        CIRCUIT,
        MONEY
    }

    /** Words the letter of a name: "person B". */
    @FunctionalInterface
    public interface Words {
        /** @param letter {@code A} for the first of its kind; empty for the team and for money */
        String of(Who who, String letter);
    }

    private final Map<String, String> names = new LinkedHashMap<>();
    private final Words words;
    private final Amounts amounts;
    private final Pattern any;

    /** @param facts whose names are taken out */
    public Unnamed(Facts facts, Words words) {
        this.words = words;
        this.amounts = new Amounts(facts);
        all(facts, Team.class, Who.TEAM, team -> Stream.of(team.name()));
        all(facts, Person.class, Who.PERSON, person -> Stream.of(person.name()));
        all(facts, Finding.class, Who.PERSON, each -> Stream.of(each.by()));
        all(facts, Incident.class, Who.PERSON, each -> Stream.of(each.by(), each.closedBy()));
        all(facts, Cause.class, Who.PERSON, each -> Stream.of(each.by()));
        all(facts, CauseCall.class, Who.PERSON, each -> Stream.of(each.by()));
        all(facts, CauseTest.class, Who.PERSON, each -> Stream.of(each.who()));
        all(facts, CaseAction.class, Who.PERSON, each -> Stream.of(each.who()));
        all(facts, Photo.class, Who.PERSON, each -> Stream.of(each.by()));
        all(facts, Engine.class, Who.CUSTOMER, each -> Stream.of(each.owner() == null ? "" : each.owner()));
        all(facts, CostLine.class, Who.CUSTOMER, each -> Stream.of(each.customer()));
        all(facts, CostLine.class, Who.FIRM, each -> Stream.of(each.supplier()));
        all(facts, SentOut.class, Who.FIRM, each -> Stream.of(each.sentTo()));
        all(facts, Event.class, Who.EVENT, each -> Stream.of(each.name()));
        all(facts, Event.class, Who.CIRCUIT, each -> Stream.of(each.circuit()));
        List<String> longestFirst = names.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote)
                .toList();
        this.any = Pattern.compile(
                "(?<![\\p{L}\\p{N}])(?:" + String.join("|", longestFirst) + ")(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private <F extends Fact> void all(
            Facts facts, Class<F> kind, Who who, java.util.function.Function<F, Stream<String>> named) {
        facts.of(kind).all().stream()
                .map(Entry::fact)
                .flatMap(named)
                .map(String::strip)
                .filter(name -> name.length() > 1)
                .forEach(name -> names.computeIfAbsent(key(name), none -> worded(who)));
    }

    private static String key(String name) {
        return name.toLowerCase(java.util.Locale.ROOT);
    }

    private String worded(Who who) {
        if (who == Who.TEAM) {
            return words.of(who, "");
        }
        int before = (int) names.values().stream()
                .filter(given -> given.startsWith(words.of(who, "")))
                .count();
        return words.of(who, letter(before));
    }

    /** A to Z, then AA. */
    private static String letter(int number) {
        String last = String.valueOf((char) ('A' + number % 26));
        return number < 26 ? last : letter(number / 26 - 1) + last;
    }

    /** The text without names and amounts. */
    public String of(String text) {
        String without = text;
        if (!names.isEmpty()) {
            without = any.matcher(text)
                    .replaceAll(found -> Matcher.quoteReplacement(names.getOrDefault(key(found.group()), "")));
        }
        return amounts.without(without, words.of(Who.MONEY, ""));
    }
}
