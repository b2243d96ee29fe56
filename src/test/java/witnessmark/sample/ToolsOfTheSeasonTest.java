package witnessmark.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Notice;
import witnessmark.domain.Tool;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Calibrations;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Meters;
import witnessmark.ledger.Notices;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.ledger.result.MeterStretch.Finding;
import witnessmark.ledger.result.TightenedWith;

/** What the sample season says of its tools and its maker's notice: invented, by its own tables. */
class ToolsOfTheSeasonTest {
    private Facts facts = Facts.none();

    @BeforeEach
    void open(@TempDir Path folder) {
        facts = new SampleBooks(folder).open().view().facts();
    }

    @Test
    void on_1_february_the_wrench_w2_is_overdue_since_a_year_and_what_it_tightened_is_listed() {
        Id<Tool> wrench = tool("W2");
        LocalDate day = LocalDate.of(2026, 2, 1);
        assertThat(Calibrations.overdue(facts, wrench, day)).contains(LocalDate.of(2025, 2, 10));
        assertThat(Calibrations.tightened(facts, wrench))
                .extracting(Entry::fact)
                .extracting(Joint::which)
                .containsExactly("main caps 1 to 5", "all eight", "all eight");
        assertThat(Calibrations.overdue(facts, wrench, LocalDate.of(2026, 6, 19)))
                .isEmpty();
        assertThat(Calibrations.last(facts, wrench, LocalDate.of(2026, 7, 8))
                        .orElseThrow()
                        .fact()
                        .asFound())
                .isEqualTo(-1100);
        assertThat(Calibrations.overdue(facts, tool("W1"), day)).isEmpty();
    }

    /** 18 rows of joints.csv name W1 after its calibration of 20 November: six times three stages of head studs. */
    @Test
    void what_w1_tightened_in_three_stages_each_is_six_groups_on_four_engines() {
        TightenedWith all = Calibrations.tightenedBefore(facts, tool("W1"), LocalDate.of(2026, 7, 8));
        assertThat(all.since()).isEqualTo(LocalDate.of(2025, 11, 20));
        assertThat(all.joints()).hasSize(18);
        assertThat(all.groups()).isEqualTo(6);
        assertThat(all.engines())
                .extracting(engine -> facts.of(Engine.class).get(engine).number())
                .containsExactly("K03", "K05", "K06", "K22");
    }

    @Test
    void the_notice_of_june_means_the_three_gaskets_of_the_batch() {
        Notice notice = facts.of(Notice.class).named("H1-26-03").orElseThrow().fact();
        assertThat(Notices.parts(facts, notice))
                .extracting(part -> part.fact().mark())
                .containsExactlyInAnyOrder("HG-03a", "HG-05a", "HG-06a");
    }

    @Test
    void the_meters_find_what_was_unplugged_in_may_and_what_nobody_logged_before_the_24th() {
        LifeLedger ledger = LifeLedger.of(facts, new AsOf(LocalDate.of(2026, 7, 8), ZoneId.of("Europe/London")));
        List<MeterStretch> apart = new Meters(ledger)
                .all().stream()
                        .filter(stretch -> stretch.finding() != Finding.AGREE)
                        .toList();
        assertThat(apart)
                .extracting(
                        stretch -> stretch.meter().fact().mark(),
                        stretch -> stretch.to().fact().at().day(),
                        MeterStretch::finding,
                        MeterStretch::unexplained)
                .containsExactly(
                        tuple("HM-41", LocalDate.of(2026, 5, 24), Finding.NOT_LOGGED, true),
                        tuple("HM-57", LocalDate.of(2026, 5, 3), Finding.STOOD_STILL, false));
    }

    private Id<Tool> tool(String mark) {
        return facts.of(Tool.class).named(mark).orElseThrow().id();
    }
}
