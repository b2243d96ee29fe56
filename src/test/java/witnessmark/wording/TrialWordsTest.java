package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.logbook.trials.SeeTrials;
import witnessmark.sample.SampleViews;
import witnessmark.study.result.TrialAnswer;
import witnessmark.study.result.TrialLife;
import witnessmark.study.result.TrialSide;
import witnessmark.study.result.TrialTest;

/** How a chance is said. A small one as below a bound, never as nothing: common practice of those who print tests, no source. */
class TrialWordsTest {
    private static final TrialAnswer SAMPLE =
            SeeTrials.all(SampleViews.opening()).get(0);

    @ParameterizedTest
    @CsvSource({"0.0000001, below 0.001", "0.00099, below 0.001", "0.001, 0.001", "0.0316, 0.032", "0.97, 0.970"})
    void a_chance_is_never_nothing(double p, String said) {
        TrialLife life = SAMPLE.usual().lives().get(0);
        TrialLife failed = new TrialLife(
                life.part(),
                life.stay(),
                life.engine(),
                life.place(),
                life.position(),
                life.entry(),
                life.exit(),
                life.doubt(),
                TrialLife.End.FAILED,
                List.of(),
                List.of());
        TrialAnswer answer = new TrialAnswer(
                SAMPLE.trial(),
                SAMPLE.triedDesign(),
                SAMPLE.usualDesign(),
                SAMPLE.counter(),
                SAMPLE.limit(),
                SAMPLE.tried(),
                new TrialSide(List.of(failed), 0),
                new TrialTest(0, 9, 20, 9, 5, 20, p),
                false);
        Texts texts = Texts.in(Locale.UK);

        assertThat(new TrialWords(texts, new Measures(texts, Units.METRIC)).test(answer))
                .anyMatch(line -> line.endsWith("P " + said + "."));
    }
}
