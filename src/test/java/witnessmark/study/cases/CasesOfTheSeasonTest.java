package witnessmark.study.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.ledger.LifeLedger;
import witnessmark.sample.SampleViews;
import witnessmark.study.result.Aspect;
import witnessmark.study.result.InCommon;
import witnessmark.study.result.ReadAcross;

/** What the investigation of the invented season found the big-end failures to share, and where it looked across. */
class CasesOfTheSeasonTest {
    private static Facts facts;

    @BeforeAll
    static void tellTheSeason() {
        facts = SampleViews.end().facts();
    }

    private static LifeLedger on(String day) {
        return SampleViews.on(facts, LocalDate.parse(day)).ledger();
    }

    private static Entry<Incident> incident(String mark) {
        return facts.of(Incident.class).named(mark).orElseThrow();
    }

    private static InCommon common(String day, String... marks) {
        return new Common(on(day))
                .of(Stream.of(marks).map(CasesOfTheSeasonTest::incident).toList());
    }

    private static List<String> words(List<InCommon.Alike> alike, Aspect aspect) {
        return alike.stream()
                .filter(each -> each.aspect() == aspect)
                .map(InCommon.Alike::what)
                .toList();
    }

    @Test
    void both_big_end_failures_had_the_rods_their_bolts_the_wrench_and_the_fretted_back() {
        InCommon both = common("2026-09-08", "INC-05", "INC-03");

        assertThat(both.incidents()).extracting(each -> each.fact().mark()).containsExactly("INC-03", "INC-05");
        assertThat(words(both.shared(), Aspect.ENGINE)).containsExactly("K05");
        assertThat(words(both.shared(), Aspect.PART))
                .contains("RS-05", "RB-05", "CR-05")
                .doesNotContain("BE-05a");
        assertThat(words(both.shared(), Aspect.TOOL)).contains("W2");
        assertThat(words(both.shared(), Aspect.NUMBER)).containsExactly("3");
        assertThat(words(both.shared(), Aspect.MARK)).contains("back of a shell, fretted");
        assertThat(words(both.onlyIn(incident("INC-03")), Aspect.PART)).contains("BE-05a");
        assertThat(words(both.onlyIn(incident("INC-05")), Aspect.PART)).contains("BE-05b");
        assertThat(words(both.onlyIn(incident("INC-05")), Aspect.MARK)).contains("big-end shell, spun");
    }

    @Test
    void what_was_as_it_should_be_is_no_mark_in_common() {
        assertThat(words(common("2026-09-08", "INC-03", "INC-05").alike(), Aspect.MARK))
                .noneMatch(mark -> mark.contains("even wear"));
    }

    @Test
    void a_failure_is_compared_by_what_was_known_on_the_day() {
        assertThat(words(common("2026-06-16", "INC-03", "INC-05").onlyIn(incident("INC-05")), Aspect.MARK))
                .as("seen on 17 June")
                .isEmpty();
    }

    @Test
    void it_takes_two() {
        assertThatIllegalArgumentException().isThrownBy(() -> common("2026-09-08", "INC-05"));
        assertThatIllegalArgumentException().isThrownBy(() -> common("2026-09-08", "INC-05", "INC-05"));
    }

    @Test
    void springs_of_the_design_that_broke_are_read_across_to_the_engine_that_carries_them() {
        List<ReadAcross> across = new Across(on("2026-07-28")).of(incident("INC-06"));

        assertThat(across)
                .filteredOn(each -> each.engine().fact().number().equals("K06"))
                .anySatisfy(each -> {
                    assertThat(each.aspect()).isIn(Aspect.DESIGN, Aspect.BATCH);
                    assertThat(each.parts())
                            .extracting(part -> part.fact().mark())
                            .contains("VS-06a");
                });
        assertThat(across).noneMatch(each -> each.engine().fact().number().equals("K03"));
    }
}
