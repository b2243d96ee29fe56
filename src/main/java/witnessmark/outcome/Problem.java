package witnessmark.outcome;

import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong.
 *
 * @param kind which, from the closed list
 * @param facts what the sentence needs, in the order {@link ProblemKind} states
 * @param place where, when it was read from a file
 */
public record Problem(
        ProblemKind kind, List<Object> facts, @Nullable Place place) {
    private static final Pattern BELOW_ZERO = Pattern.compile("[-\u2212]\\s*[.,:]?\\d");

    public Problem {
        facts = List.copyOf(facts);
        if (facts.size() != kind.facts()) {
            throw new IllegalArgumentException(kind + " carries " + kind.facts() + " facts, got " + facts);
        }
    }

    public static Problem of(ProblemKind kind, Object... facts) {
        return new Problem(kind, List.of(facts), null);
    }

    /**
     * Of a text that says no figure the field can hold.
     *
     * @param field which field, or its name
     * @param text as typed
     * @param example what can be typed there
     */
    public static Problem unread(Object field, String text, Object example) {
        boolean less = BELOW_ZERO.matcher(text).lookingAt();
        return of(less ? ProblemKind.LESS_THAN_NOTHING : ProblemKind.CANNOT_READ, field, text, example);
    }

    public Problem at(Place where) {
        return new Problem(kind, facts, where);
    }

    /** Whether a person may overrule it; what contradicts itself stops. */
    public boolean stops() {
        return kind.stops();
    }
}
