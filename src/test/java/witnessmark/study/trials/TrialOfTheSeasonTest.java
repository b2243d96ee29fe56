package witnessmark.study.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import witnessmark.domain.PartHarm;
import witnessmark.domain.TrialVerdict;
import witnessmark.sample.SampleViews;
import witnessmark.study.result.TrialAnswer;
import witnessmark.study.result.TrialLife;

/** The coated head gasket of the invented season, lived through to its verdict (design 06, part 14.11, INC-04). */
class TrialOfTheSeasonTest {
    @Test
    void it_ran_till_the_winter_strip_and_a_person_judged_it() {
        TrialAnswer end = new Trials(SampleViews.end().ledger()).all().get(0);

        TrialLife coated = end.tried().lives().get(0);
        assertThat(end.tried().lives()).hasSize(1);
        assertThat(coated.end()).isEqualTo(TrialLife.End.CAME_OFF);
        assertThat(coated.stay().fitment().fact().condition()).isEqualTo("sealed all round");
        // every run of K06 from 5 June to 26 October, design 06 table 14.5
        assertThat(coated.exit())
                .isEqualTo(SampleViews.end()
                        .ledger()
                        .engineSince(
                                coated.engine(), end.counter(), coated.stay().from())
                        .total());
        assertThat(end.judged()).isTrue();
        assertThat(end.trial().fact().verdict()).isEqualTo(TrialVerdict.AS_GOOD);
    }

    @Test
    void the_gasket_that_boiling_blew_is_damaged_and_did_not_fail_by_itself() {
        List<TrialLife> usual =
                new Trials(SampleViews.opening().ledger()).all().get(0).usual().lives();

        TrialLife blown = usual.stream()
                .filter(life -> life.part().fact().mark().equals("HG-06a"))
                .findFirst()
                .orElseThrow();
        assertThat(blown.end()).isEqualTo(TrialLife.End.CAME_OFF);
        assertThat(blown.harms())
                .singleElement()
                .extracting(harm -> harm.named().fact().harm())
                .isEqualTo(PartHarm.DAMAGED);
        assertThat(blown.findings())
                .as("seen where it had sat, the day after it came off")
                .hasSize(1);
    }
}
