package witnessmark.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Notice;
import witnessmark.domain.Tool;
import witnessmark.ledger.Calibrations;
import witnessmark.ledger.Notices;

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

    @Test
    void the_notice_of_june_means_the_three_gaskets_of_the_batch() {
        Notice notice = facts.of(Notice.class).named("H1-26-03").orElseThrow().fact();
        assertThat(Notices.parts(facts, notice))
                .extracting(part -> part.fact().mark())
                .containsExactlyInAnyOrder("HG-03a", "HG-05a", "HG-06a");
    }

    private Id<Tool> tool(String mark) {
        return facts.of(Tool.class).named(mark).orElseThrow().id();
    }
}
