package witnessmark.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;

/** Writing, taking back and looking back, on the sample season and the real store. */
class DeskTest {
    private static final long RUNNING = (27 * 60 + 30) * 1000L;

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    @Test
    void a_run_moves_the_life_of_its_engine_and_of_every_part_in_it_by_its_running_time() {
        long engine = life("K03");
        long springs = life("VS-03");
        long other = life("K06");
        logRun();
        assertThat(life("K03") - engine).isEqualTo(RUNNING);
        assertThat(life("VS-03") - springs).isEqualTo(RUNNING);
        assertThat(life("K06")).isEqualTo(other);
    }

    @Test
    void undo_gives_every_life_back_and_redo_takes_it_again() {
        long before = life("VS-03");
        logRun();
        desk.undo().orThrow();
        assertThat(life("VS-03")).isEqualTo(before);
        desk.redo().orThrow();
        assertThat(life("VS-03")).isEqualTo(before + RUNNING);
        desk.undo().orThrow();
        assertThat(life("VS-03")).isEqualTo(before);
    }

    @Test
    void undo_itself_writes_an_amendment_and_nothing_is_deleted() {
        Entry<Run> run = logRun();
        desk.undo().orThrow();
        Entry<Run> now = desk.view().facts().of(Run.class).find(run.id()).orElseThrow();
        assertThat(now.standing()).isEqualTo(Standing.STRUCK_OUT);
        assertThat(desk.logbook().history("run", run.id().value())).hasSize(2);
        assertThat(desk.logbook().verify()).isEmpty();
    }

    @Test
    void with_nothing_left_to_take_back_undo_says_so() {
        assertThat(desk.undo().problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.kind()).isEqualTo(ProblemKind.NOTHING_TO_UNDO));
    }

    @Test
    void a_change_that_was_changed_again_since_is_not_taken_back() {
        Entry<Run> run = logRun();
        Entry<Run> struck = new Entry<>(run.id(), run.fact(), Standing.STRUCK_OUT, "elsewhere", run.rev() + 1);
        desk.logbook()
                .write(new witnessmark.logbook.port.Change("Crew chief", "another hand", List.of(struck)))
                .orThrow();
        assertThat(desk.undo().problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.kind()).isEqualTo(ProblemKind.CHANGED_MEANWHILE));
    }

    @Test
    void a_struck_out_run_counts_nowhere_until_it_is_restored() {
        long before = life("K03");
        Entry<Run> run = logRun();
        StrikeOut strike = new StrikeOut(desk);
        strike.strikeOut(run, "the hour meter was not on", "run struck out").orThrow();
        assertThat(life("K03")).isEqualTo(before);
        Entry<Run> struck = desk.view().facts().of(Run.class).find(run.id()).orElseThrow();
        strike.restore(struck, "run restored").orThrow();
        assertThat(life("K03")).isEqualTo(before + RUNNING);
    }

    @Test
    void striking_out_needs_a_reason() {
        Entry<Run> run = logRun();
        assertThat(new StrikeOut(desk).strikeOut(run, "  ", "run struck out").problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.kind()).isEqualTo(ProblemKind.NEEDED));
    }

    @Test
    void as_of_an_earlier_day_later_runs_do_not_count_and_nothing_can_be_written() {
        long now = life("K03");
        desk.lookAsOf(LocalDate.of(2026, 7, 4));
        assertThat(life("K03")).isLessThan(now);
        assertThat(save(typed()).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.kind()).isEqualTo(ProblemKind.AS_OF_EARLIER_DAY));
        desk.lookAsOf(null);
        assertThat(life("K03")).isEqualTo(now);
    }

    @Test
    void as_of_an_earlier_day_nothing_is_taken_back_either() {
        logRun();
        long now = life("K03");
        desk.lookAsOf(LocalDate.of(2026, 7, 4));
        assertThat(desk.undo().problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.kind()).isEqualTo(ProblemKind.AS_OF_EARLIER_DAY));
        desk.lookAsOf(null);
        assertThat(life("K03")).isEqualTo(now);
        desk.undo().orThrow();
        assertThat(life("K03")).isEqualTo(now - RUNNING);
    }

    @Test
    void when_something_was_last_saved_is_known_from_the_first_save_on() {
        assertThat(desk.lastWritten()).isEmpty();
        logRun();
        Instant saved = desk.lastWritten().orElseThrow();
        desk.undo().orThrow();
        assertThat(desk.lastWritten().orElseThrow()).isAfterOrEqualTo(saved);
    }

    @Test
    void what_was_written_is_there_when_the_logbook_is_opened_again() {
        Entry<Run> run = logRun();
        desk.logbook().close();
        desk = new SampleBooks(folder).open();
        assertThat(desk.view().facts().of(Run.class).find(run.id()))
                .hasValueSatisfying(again -> assertThat(again.fact()).isEqualTo(run.fact()));
        assertThat(desk.logbook().verify()).isEmpty();
    }

    private long life(String name) {
        Subject subject = Subject.named(desk.view().facts(), name).orElseThrow();
        return SeeLives.of(desk.view(), subject, Counter.RUNNING).total();
    }

    private Map<RunField, String> typed() {
        Entry<Car> car = desk.view().facts().of(Car.class).named("41").orElseThrow();
        Map<RunField, String> typed = new EnumMap<>(sheet().fresh(car.id()));
        typed.put(RunField.OUT_AT, "14:00");
        typed.put(RunField.RUNNING, "27:30");
        return typed;
    }

    private RunSheet sheet() {
        return new RunSheet(desk, SampleBooks.ids(), FieldUnits.metric(DayOrder.DAY_FIRST));
    }

    private Outcome<Written> save(Map<RunField, String> typed) {
        return sheet().save(typed, "run logged");
    }

    private Entry<Run> logRun() {
        Written written = save(typed()).orThrow();
        return written.facts()
                .of(Run.class)
                .find(new witnessmark.domain.Id<>(written.amendments().get(0).record()))
                .orElseThrow();
    }
}
