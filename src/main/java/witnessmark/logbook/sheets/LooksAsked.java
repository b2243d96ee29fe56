package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Look;
import witnessmark.domain.Part;
import witnessmark.domain.Reading;
import witnessmark.domain.Work;
import witnessmark.ledger.result.HeldBy;
import witnessmark.quantity.Moment;

/**
 * What was to be looked at before something held may be signed clear, item by item, and which of it nobody named as done
 * nor wrote down since. Words are compared, not what they mean: so this asks and never refuses.
 */
final class LooksAsked {
    /** Words that say that something was done, not to what. */
    private static final Set<String> HOW = Set.of(
            "a", "all", "an", "and", "any", "at", "check", "cut", "down", "each", "every", "for", "in", "inspect",
            "look", "measure", "of", "off", "on", "open", "or", "out", "pull", "seen", "test", "the", "to", "up",
            "with");

    private static final int LEAST_ALIKE = 3;

    private final Facts facts;
    private final List<HeldBy> held;

    /** @param held what is to be signed clear, all of one cause; at least one */
    LooksAsked(Facts facts, List<HeldBy> held) {
        this.facts = facts;
        this.held = List.copyOf(held);
    }

    /**
     * Those of which nothing is said, in the order they were asked for; none when nobody said what to look at.
     *
     * @param said what was done and what was found, as typed
     */
    List<String> missing(String said) {
        List<String> words = new ArrayList<>(words(said));
        recorded().forEach(text -> words.addAll(words(text)));
        return Words.listed(held.get(0).asks()).stream()
                .filter(item -> !isNamed(item, words))
                .toList();
    }

    /** What work, readings and looks since then say of it. */
    private List<String> recorded() {
        List<String> texts = new ArrayList<>();
        facts.of(Work.class)
                .where(work -> !work.at().isBefore(since()) && isOn(work.engine(), work.part()))
                .forEach(work ->
                        texts.add(work.fact().kind().code() + " " + work.fact().note()));
        facts.of(Reading.class)
                .where(read -> !read.at().isBefore(since()) && isOn(read.engine(), read.part()))
                .forEach(read ->
                        texts.add(read.fact().kind().code() + " " + read.fact().note()));
        facts.of(Look.class)
                .where(look -> !look.at().isBefore(since()) && isAt(look))
                .forEach(
                        look -> texts.add(look.fact().what() + " " + look.fact().words()));
        return texts;
    }

    private Moment since() {
        return held.get(0).since();
    }

    private boolean isOn(@Nullable Id<Engine> engine, @Nullable Id<Part> part) {
        return held.stream()
                .anyMatch(by -> part != null
                        ? part.equals(by.part()) || by.part() == null && isHeld(engine, by)
                        : isHeld(engine, by));
    }

    private static boolean isHeld(@Nullable Id<Engine> engine, HeldBy by) {
        return engine != null && engine.equals(by.engine());
    }

    private boolean isAt(Look look) {
        if (look.engine() != null) {
            return isOn(look.engine(), null);
        }
        return !facts.of(EngineInCar.class)
                .where(stay -> stay.car().equals(look.car())
                        && isOn(stay.engine(), null)
                        && !stay.from().isAfter(look.at())
                        && (stay.to() == null || stay.to().isAfter(look.at())))
                .isEmpty();
    }

    /** Whether each word that says what is meant is there, in some form of it. */
    private static boolean isNamed(String item, List<String> words) {
        List<String> all = words(item);
        List<String> meant = all.stream().filter(word -> !HOW.contains(word)).toList();
        return (meant.isEmpty() ? all : meant)
                .stream().allMatch(word -> words.stream().anyMatch(other -> isAlike(word, other)));
    }

    private static boolean isAlike(String one, String other) {
        return one.equals(other)
                || Math.min(one.length(), other.length()) >= LEAST_ALIKE
                        && (one.startsWith(other) || other.startsWith(one));
    }

    /** Its words without case and without the endings of a plural and of what is done. */
    private static List<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .map(word -> word.length() <= LEAST_ALIKE ? word : word.replaceFirst("(?:s|ed|ing)$", ""))
                .toList();
    }
}
