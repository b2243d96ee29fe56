package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;

/** What cannot be read is said beside its own field, and nowhere else. */
class EachFieldByItselfTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");

    private final Desk book = new Desk(new MemoryLogbook(SampleBook.facts()), new SampleBook.Day(SATURDAY), "TE");
    private final RunSheet sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);

    private Map<RunField, String> typed(RunField field, String text) {
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(null));
        typed.put(RunField.RUNNING, "28:20");
        typed.put(field, text);
        return typed;
    }

    private static @Nullable ProblemKind kind(RunReading read, RunField field) {
        Problem problem = read.of(field).problem();
        return problem == null ? null : problem.kind();
    }

    @ParameterizedTest(name = "the date ''{0}''")
    @ValueSource(strings = {"32 Jul", "soon", ""})
    void a_date_that_cannot_be_read_is_not_the_cars_fault(String date) {
        RunReading read = sheet.read(typed(RunField.DATE, date));
        assertThat(read.stopped()).containsExactly(RunField.DATE);
        assertThat(kind(read, RunField.CAR)).isNull();
    }

    @ParameterizedTest(name = "out at {0} on {1}: {2}")
    @CsvSource({
        "25:99, 32 Jul, CANNOT_READ",
        "25:99, 25 Jul, CANNOT_READ",
        "09:00, 32 Jul,",
        "before, 32 Jul,",
        "'', 32 Jul,",
    })
    void a_time_out_is_read_whether_or_not_the_date_is(String out, String date, @Nullable ProblemKind kind) {
        Map<RunField, String> typed = typed(RunField.DATE, date);
        typed.put(RunField.OUT_AT, out);
        assertThat(kind(sheet.read(typed), RunField.OUT_AT)).isEqualTo(kind);
    }

    /** The last run of the car was measured by a trace: that says nothing about the next. */
    @Test
    void how_the_last_run_was_measured_is_not_carried_over() {
        Map<RunField, String> fresh = sheet.fresh(null);
        Run last = book.view()
                .facts()
                .of(Run.class)
                .inForce()
                .map(run -> run.fact())
                .filter(run -> run.car() != null && Keys.car(run.car()).equals(fresh.get(RunField.CAR)))
                .max(java.util.Comparator.comparing(Run::start))
                .orElseThrow();
        assertThat(last.knownBy().of(Counter.RUNNING)).isEqualTo(HowKnown.TRACE);
        assertThat(fresh).containsEntry(RunField.KNOWN, HowKnown.TIMED.code());
        assertThat(sheet.read(fresh).of(RunField.KNOWN).note().kind()).isEqualTo(Note.Kind.UNLESS_CHOSEN);
    }
}
