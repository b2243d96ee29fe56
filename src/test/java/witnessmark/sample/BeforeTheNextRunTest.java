package witnessmark.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.MissedRun;
import witnessmark.domain.PartKind;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.LookAt;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.NextRun;
import witnessmark.logbook.standing.SeeStanding;

/**
 * What is shown before the next run on days of the invented season, seen at midday: what came after is not written yet.
 * Oracles: the lines of the season's own table of looks, and the table of what should have been shown.
 */
class BeforeTheNextRunTest {
    @TempDir
    static Path folder;

    private static Desk desk;

    @BeforeAll
    static void tellTheSeason() {
        SampleBooks books = new SampleBooks(folder);
        desk = books.open();
        books.tellAll(desk);
    }

    @AfterAll
    static void close() {
        desk.logbook().close();
    }

    /** As of a day whose runs of this name are not run yet. */
    private static List<NextRun> before(String day, String run) {
        Facts facts = desk.view().facts();
        LocalDate then = LocalDate.parse(day);
        List<Entry<?>> later = new ArrayList<>();
        struckOut(
                later,
                facts,
                Run.class,
                each -> each.start().day().equals(then) && each.name().equals(run));
        struckOut(later, facts, MissedRun.class, each -> each.at().day().equals(then));
        Facts midday = facts.with(later);
        return SeeStanding.of(new View(
                        midday,
                        then,
                        desk.view().zone(),
                        LifeLedger.of(midday, new AsOf(then, desk.view().zone())),
                        true))
                .nextRuns();
    }

    private static <F extends Fact> void struckOut(List<Entry<?>> out, Facts facts, Class<F> kind, Predicate<F> which) {
        facts.of(kind)
                .where(which)
                .forEach(entry ->
                        out.add(new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, "later", entry.rev() + 1)));
    }

    private static NextRun of(List<NextRun> runs, String car) {
        return runs.stream().filter(run -> run.name().equals(car)).findFirst().orElseThrow();
    }

    @Test
    void between_the_races_of_5_july_what_was_looked_at_is_ticked_as_the_table_of_looks_has_it() throws IOException {
        List<String> table = Files.readAllLines(SampleBooks.FOLDER.resolve("looks.csv"));
        List<NextRun> runs = before("2026-07-05", "Race 2");

        for (String car : List.of("41", "57")) {
            NextRun run = of(runs, car);
            assertThat(run.planned().name()).isEqualTo("Race 2");
            assertThat(run.planned().out()).isEqualTo(LocalTime.of(15, 0));
            for (String what : List.of("plugs", "oil and water", "torque stripes", "filter")) {
                boolean inTable = table.stream().anyMatch(line -> line.contains("," + car + ",," + what + ","));
                assertThat(run.looks())
                        .as(car + " " + what)
                        .filteredOn(look -> look.what().equals(what))
                        .singleElement()
                        .satisfies(look -> assertThat(look.done() != null).isEqualTo(inTable));
            }
        }
        assertThat(of(runs, "41").looks().stream()
                        .filter(look -> look.what().equals("plugs"))
                        .map(look -> look.done().fact().by())
                        .toList())
                .containsExactly("Mechanic 1");
    }

    @Test
    void between_the_races_of_3_may_the_over_rev_holds_k03_and_what_the_driver_told_is_to_be_looked_at() {
        NextRun run = of(before("2026-05-03", "Race 2"), "41");

        assertThat(run.engine()).isEqualTo("K03");
        assertThat(run.planned().name()).isEqualTo("Race 2");
        assertThat(run.marks().stream()
                        .filter(mark -> mark.state() == MarkState.HELD)
                        .map(MarkOn::kind))
                .contains(PartKind.RODS, PartKind.ROD_BOLTS, PartKind.EXHAUST_VALVES, PartKind.VALVE_SPRINGS);
        assertThat(run.looks().get(0).reason()).isEqualTo(LookAt.Reason.TOLD);
        assertThat(run.looks().get(0).what()).startsWith("missed down-change on lap 9");
        assertThat(run.looks().get(0).done()).isNull();
    }

    @Test
    void a_car_whose_last_run_of_the_event_is_over_or_did_not_start_has_no_next_run_and_no_event_has_none() {
        assertThat(before("2026-05-03", "none"))
                .isNotEmpty()
                .extracting(NextRun::name)
                .doesNotContain("57");
        assertThat(before("2026-07-05", "none")).isEmpty();
        assertThat(before("2026-07-08", "none")).isEmpty();
    }

    @Test
    void on_the_first_evening_the_next_run_is_the_first_of_the_second_day() {
        assertThat(before("2026-07-04", "none"))
                .extracting(run -> run.name() + " " + run.planned().name() + " "
                        + run.planned().day())
                .containsExactly("41 Race 1 2026-07-05", "57 Race 1 2026-07-05");
    }
}
