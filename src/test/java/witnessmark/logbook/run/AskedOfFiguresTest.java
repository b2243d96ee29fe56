package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/**
 * Running time and over-revs held against earlier runs and against each other, on the sample season. That such figures
 * are asked about is common practice, no source.
 */
class AskedOfFiguresTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");

    private final Desk book = new Desk(new MemoryLogbook(SampleBook.facts()), new SampleBook.Day(SATURDAY), "TE");
    private final RunSheet sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);

    private Facts facts() {
        return book.view().facts();
    }

    private Map<RunField, String> typed(String running, String laps) {
        Id<Car> car = facts().of(Car.class).named("41").orElseThrow().id();
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(car));
        typed.put(RunField.RUNNING, running);
        typed.put(RunField.LAPS, laps);
        return typed;
    }

    private @Nullable Problem asked(Map<RunField, String> typed, RunField field) {
        return sheet.read(typed).of(field).problem();
    }

    /** The laps of K03 on the track, newest first, by the records alone. */
    private List<Long> lapsOfEngine() {
        Id<Engine> engine = facts().of(Engine.class).named("K03").orElseThrow().id();
        return facts().of(Run.class)
                .inForce()
                .map(run -> run.fact())
                .filter(run -> run.engine().equals(engine) && run.car() != null && run.perhapsSame() == null)
                .filter(run -> run.laps() != null && run.laps() >= 3)
                .sorted(Comparator.comparing(Run::start).reversed())
                .limit(12)
                .map(run -> run.running().millis() / run.laps())
                .toList();
    }

    @Test
    void sixty_two_minutes_for_twelve_laps_are_asked_about_where_a_lap_takes_about_two() {
        assertThat(lapsOfEngine()).hasSize(12).allMatch(lap -> lap < 150_000);
        Problem asked = asked(typed("62", "12"), RunField.RUNNING);
        assertThat(asked).isNotNull();
        assertThat(asked.kind()).isEqualTo(ProblemKind.PACE_UNUSUAL);
        assertThat(asked.facts().subList(0, 3))
                .isEqualTo(List.of(new RunningTime(3_720_000), 12, new RunningTime(310_000)));
        assertThat(asked.facts().get(5)).isEqualTo(12);
        assertThat(asked.facts().get(6)).as("nobody ran on that circuit yet").isEqualTo("K03");
        assertThat(asked.stops()).isFalse();
        assertThat(sheet.read(typed("62", "12")).of(RunField.LAPS).note().kind())
                .isEqualTo(Note.Kind.USUAL_PACE);
    }

    /** A lap as long as the others of the circuit is never asked about, one of four times that or a quarter always. */
    @Test
    void on_a_circuit_that_was_run_on_its_own_laps_say_what_is_usual() {
        Entry<Event> round =
                facts().of(Event.class).named("Round 4, Hexley Bowl").orElseThrow();
        List<Long> laps = facts().of(Run.class)
                .inForce()
                .map(run -> run.fact())
                .filter(run -> round.id().equals(run.event()))
                .map(run -> run.running().millis() / run.laps())
                .sorted()
                .toList();
        long middle = laps.get(laps.size() / 2) * 12 / 1000;
        assertThat(asked(at(round, middle), RunField.RUNNING)).isNull();
        for (long wrong : new long[] {middle * 4, middle / 4}) {
            Problem asked = asked(at(round, wrong), RunField.RUNNING);
            assertThat(asked).isNotNull();
            assertThat(asked.kind()).isEqualTo(ProblemKind.PACE_UNUSUAL);
            assertThat(asked.facts().get(6)).isEqualTo(round.fact().circuit());
        }
    }

    private Map<RunField, String> at(Entry<Event> event, long seconds) {
        Map<RunField, String> typed = typed(seconds + " s", "12");
        typed.put(RunField.EVENT, event.id().text());
        typed.put(RunField.PLANNED, "kind:test");
        return typed;
    }

    @Test
    void without_laps_or_on_the_way_out_and_in_only_nothing_is_asked() {
        assertThat(asked(typed("62", ""), RunField.RUNNING)).isNull();
        assertThat(asked(typed("12", "2"), RunField.RUNNING)).isNull();
    }

    /** The figure of the design is 8 500 in the sample: a speed of the figure itself is not above it. */
    @ParameterizedTest(name = "highest {0}, over-revs {1}: {2}")
    @CsvSource({
        "8501, 0, OVER_REV_NOT_COUNTED",
        "8500, 0,",
        "8501, 1,",
        "8500, 1, OVER_REV_NOT_REACHED",
        "8501, '',",
        "'', 1,",
    })
    void over_revs_and_the_highest_speed_are_held_against_each_other(
            String highest, String counted, @Nullable ProblemKind kind) {
        Id<EngineDesign> design =
                facts().of(Engine.class).named("K03").orElseThrow().fact().design();
        assertThat(facts().of(EngineDesign.class).get(design).overRevAbove().rpm())
                .isEqualTo(8500);
        Map<RunField, String> typed = typed("28:20", "15");
        typed.put(RunField.HIGHEST, highest);
        typed.put(RunField.OVER_REVS, counted);
        Problem asked = asked(typed, RunField.OVER_REVS);
        assertThat(asked == null ? null : asked.kind()).isEqualTo(kind);
        assertThat(sheet.read(typed).of(RunField.OVER_REVS).stops()).isFalse();
    }
}
