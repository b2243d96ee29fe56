package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** Problems as people read them: what happened, what it means for the entries, what to do. */
public final class Sentences {
    private static final Texts TEXTS = Texts.in(Locale.UK);
    private static final Problems PROBLEMS = new Problems(TEXTS, new Measures(TEXTS, Units.METRIC));

    private Sentences() {}

    public static String of(Problem problem) {
        return PROBLEMS.sentence(problem);
    }

    /** The sentence of the one problem of an end that has to be of a kind, after a look at its being complete. */
    public static String only(Outcome<?> outcome, ProblemKind kind) {
        assertThat(outcome.problems()).extracting(Problem::kind).containsExactly(kind);
        return complete(outcome.problems()).get(0);
    }

    /** The sentences of all problems, each with its three parts and nothing of the machinery in it. */
    public static List<String> complete(List<Problem> problems) {
        List<String> sentences = problems.stream().map(Sentences::of).toList();
        for (int i = 0; i < sentences.size(); i++) {
            Problem problem = problems.get(i);
            assertThat(sentences.get(i))
                    .contains(PROBLEMS.happened(problem), PROBLEMS.meaning(problem), PROBLEMS.remedy(problem))
                    .endsWith(".")
                    .doesNotContain("{0", "{1", "{2", "{3", "null", "Exception", "Problem[", "SQLITE_");
        }
        return sentences;
    }
}
