package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** A part fitted at noon without a time, and a run in the afternoon. */
class UntimedChangeTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");

    private final Facts facts = SampleBook.facts();
    private final Id<Engine> k03 =
            facts.of(Engine.class).named("K03").orElseThrow().id();
    private final Id<Part> shelved =
            facts.of(Part.class).named("VS-21b").orElseThrow().id();

    /** The same logbook with other springs put in K03 at a moment of that day. */
    private RunSheet fittedAt(Moment moment) {
        Entry<Fitment> there = facts.of(Fitment.class)
                .inForce()
                .filter(entry ->
                        k03.equals(entry.fact().engine()) && entry.fact().to() == null)
                .filter(entry ->
                        facts.of(Part.class).get(entry.fact().part()).mark().equals("VS-03"))
                .findFirst()
                .orElseThrow();
        Fitment was = there.fact();
        Fitment off = new Fitment(
                was.part(), was.engine(), null, was.position(), was.from(), moment, null, null, "", "", false);
        Fitment on = new Fitment(shelved, k03, null, was.position(), moment, null, null, null, "", "", false);
        Facts changed = facts.with(List.of(
                new Entry<>(there.id(), off, Standing.IN_FORCE, null, there.rev() + 1),
                new Entry<>(SampleBook.ids().next(), on, Standing.IN_FORCE, null, 1)));
        return new RunSheet(
                new Desk(new MemoryLogbook(changed), new SampleBook.Day(SATURDAY), "TE"),
                SampleBook.ids(),
                SampleBook.UNITS);
    }

    private static Problem beside(RunSheet sheet, String out) {
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(null));
        typed.put(RunField.RUNNING, "28:20");
        typed.put(RunField.OUT_AT, out);
        return sheet.read(typed).of(RunField.OUT_AT).problem();
    }

    @Test
    void without_a_time_the_run_is_asked_about_and_can_be_saved() {
        Problem asked = beside(fittedAt(Moment.endOf(SATURDAY, ZoneId.of("Europe/London"))), "15:00");

        assertThat(Objects.requireNonNull(asked).kind()).isEqualTo(ProblemKind.FITTED_WITHOUT_TIME);
        assertThat(asked.facts().get(0)).isEqualTo(List.of("VS-21b"));
        assertThat(asked.stops()).isFalse();
    }

    @Test
    void with_a_time_nothing_is_asked() {
        assertThat(beside(fittedAt(Moment.parse("2026-07-25T08:00:00+01:00[Europe/London]")), "09:30"))
                .isNull();
    }

    /** A car that had none before: nothing of what is written says so but the day its engine went in. */
    @Test
    void a_first_engine_put_in_that_day_without_a_time_is_named() {
        Id<Car> car = SampleBook.ids().next();
        Id<EngineInCar> stay = SampleBook.ids().next();
        Moment evening = Moment.endOf(SATURDAY, ZoneId.of("Europe/London"));
        Facts changed = facts.with(List.of(
                new Entry<>(car, new Car("99", ""), Standing.IN_FORCE, null, 1),
                new Entry<>(stay, new EngineInCar(k03, car, evening, null, ""), Standing.IN_FORCE, null, 1)));
        RunSheet sheet = new RunSheet(
                new Desk(new MemoryLogbook(changed), new SampleBook.Day(SATURDAY), "TE"),
                SampleBook.ids(),
                SampleBook.UNITS);
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(car));
        typed.put(RunField.OUT_AT, "15:00");
        typed.put(RunField.RUNNING, "28:20");

        assertThat(sheet.read(typed).of(RunField.CAR).problem())
                .isEqualTo(Problem.of(ProblemKind.ENGINE_IN_THAT_EVENING, "99", "K03", SATURDAY));
        typed.put(RunField.DATE, "24 Jul 2026");
        assertThat(sheet.read(typed).of(RunField.CAR).problem())
                .isEqualTo(Problem.of(ProblemKind.NO_ENGINE_IN_CAR, "99"));
    }
}
