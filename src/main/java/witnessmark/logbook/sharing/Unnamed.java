package witnessmark.logbook.sharing;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Person;
import witnessmark.domain.Team;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;

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

    /** Under which names records keep names of others; whoever is a firm stays one where he signs a work. */
    private static final Map<String, Who> NAMED = named();

    /** Words the letter of a name: "person B". */
    @FunctionalInterface
    public interface Words {
        /** @param letter {@code A} for the first of its kind; empty for the team and for money */
        String of(Who who, String letter);
    }

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}'’-]+");
    private static final int LETTERS = 3;

    private final Map<String, String> names = new LinkedHashMap<>();
    private final Set<String> people = new LinkedHashSet<>();
    private final Words words;
    private final Amounts amounts;
    private final Pattern any;

    private static Map<String, Who> named() {
        Map<String, Who> all = new LinkedHashMap<>();
        List.of("supplier", "sentTo", "maker", "dyno").forEach(name -> all.put(name, Who.FIRM));
        List.of("owner", "customer", "from").forEach(name -> all.put(name, Who.CUSTOMER));
        List.of("circuit").forEach(name -> all.put(name, Who.CIRCUIT));
        List.of("by", "who", "second", "operator", "adviser", "toldBy", "signedBy", "closedBy")
                .forEach(name -> all.put(name, Who.PERSON));
        List.of("decidedBy", "judgedBy", "releasedBy", "withdrawnBy").forEach(name -> all.put(name, Who.PERSON));
        return all;
    }

    /** @param facts whose names are taken out */
    public Unnamed(Facts facts, Words words) {
        this.words = words;
        this.amounts = new Amounts(facts);
        all(facts, Team.class, Who.TEAM, Team::name);
        all(facts, Person.class, Who.PERSON, Person::name);
        NAMED.forEach((component, who) -> named(facts, component, who));
        all(facts, Event.class, Who.EVENT, Event::name);
        wordsOfPeople(facts);
        List<String> longestFirst = names.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote)
                .toList();
        this.any = Pattern.compile(
                "(?<![\\p{L}\\p{N}])(?:" + String.join("|", longestFirst) + ")(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private <F extends Fact> void all(Facts facts, Class<F> kind, Who who, Function<F, String> named) {
        facts.of(kind).all().forEach(entry -> add(named.apply(entry.fact()), who));
    }

    /** What stands under that name in any record; the name of the maker of an engine stays where it is of the engine. */
    private void named(Facts facts, String component, Who who) {
        for (RecordType<?> type : RecordTypes.all()) {
            type.components().stream()
                    .filter(each -> each.name().equals(component) && each.type() == String.class)
                    .forEach(each -> facts.of(type.kind()).all().stream()
                            .map(entry -> each.text(each.value(entry.fact())))
                            .filter(name -> !isOfEngine(facts, name))
                            .forEach(name -> add(name, who)));
        }
    }

    private static boolean isOfEngine(Facts facts, String name) {
        return facts.of(EngineDesign.class).all().stream()
                .anyMatch(design -> List.of(design.fact().name().split(" ")).contains(name));
    }

    private void add(String typed, Who who) {
        String name = typed.strip();
        if (name.length() > 1) {
            names.computeIfAbsent(key(name), none -> worded(who));
            if (who == Who.PERSON) {
                people.add(name);
            }
        }
    }

    /** A first name or a surname alone says as much; what somebody does in the team is nobody's name. */
    private void wordsOfPeople(Facts facts) {
        Set<String> roles = facts.of(Person.class).all().stream()
                .flatMap(person -> WORD.matcher(person.fact().role()).results())
                .map(word -> key(word.group()))
                .collect(Collectors.toSet());
        for (String name : people) {
            List<String> parts =
                    WORD.matcher(name).results().map(MatchResult::group).toList();
            String letter = Objects.requireNonNull(names.get(key(name)));
            if (!parts.isEmpty() && isProper(parts.get(parts.size() - 1))) {
                parts.stream()
                        .filter(part -> part.length() >= LETTERS && isProper(part) && !roles.contains(key(part)))
                        .forEach(part -> names.putIfAbsent(key(part), letter));
            }
        }
    }

    private static boolean isProper(String word) {
        return Character.isUpperCase(word.charAt(0));
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
