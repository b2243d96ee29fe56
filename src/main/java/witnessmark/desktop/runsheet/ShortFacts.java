package witnessmark.desktop.runsheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Texts;

/** Problems in so few words that they fit under a field, which says itself what it is and what stands in it. */
final class ShortFacts {
    private ShortFacts() {}

    /**
     * The short sentence, when there is one for the kind.
     *
     * @param figure a fact as it is shown beside its field
     */
    static Optional<String> sentence(Texts texts, Problem problem, Function<Object, String> figure) {
        String key = "runsheet.short." + problem.kind().name().toLowerCase(Locale.ROOT);
        if (!texts.has(key)) {
            return Optional.empty();
        }
        List<Object> facts = problem.facts();
        Object[] blanks = Arrays.stream(said(problem.kind()))
                .mapToObj(at -> figure.apply(facts.get(at)))
                .toArray();
        return Optional.of(texts.get(key, blanks));
    }

    /** Which facts of a problem its short sentence says, in order. */
    private static int[] said(ProblemKind kind) {
        return switch (kind) {
            case CANNOT_READ, LESS_THAN_NOTHING, LONGER_THAN_RUN, PACE_UNUSUAL -> new int[] {2};
            case TWO_READINGS, UNUSUAL, OUT_OF_RANGE -> new int[] {2, 3};
            case UNUSUAL_MEANT -> new int[] {2, 3, 4};
            case RUNS_OVERLAP, RUNS_OVERLAP_ABOUT -> new int[] {1, 3};
            case FITTED_WITHOUT_TIME, ENGINE_CHANGED_WITHOUT_TIME -> new int[] {0};
            case PLANNED_FOR_ANOTHER_DAY, RUN_IN_FUTURE, RUN_STILL_TO_COME, RUN_TOO_LONG -> new int[] {1};
            case RUN_LENGTH_UNUSUAL, OVER_REV_NOT_REACHED -> new int[] {1, 2};
            case ENGINE_IN_THAT_EVENING -> new int[] {1};
            case BEFORE_OR_AFTER_CHANGE, OVER_REV_NOT_COUNTED -> new int[] {0, 1};
            case ENDS_BEFORE_IT_BEGINS -> new int[] {1};
            default -> new int[0];
        };
    }
}
