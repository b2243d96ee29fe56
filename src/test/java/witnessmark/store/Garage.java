package witnessmark.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.DriverAsked;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.KnownBy;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Position;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.Standing;
import witnessmark.domain.StartKnown;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** Two engines, two cars, two rod positions and some parts, by name; times are whole hours. */
public final class Garage {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final Instant MIDNIGHT = Instant.parse("2026-03-01T00:00:00Z");

    public final Entry<EngineDesign> design =
            made(new EngineDesign("two litre four", 4, "in line", null, null, null, null, null, null, null, "", null));
    public final Entry<Engine> e1 = made(new Engine("E1", design.id(), null, ""));
    public final Entry<Engine> e2 = made(new Engine("E2", design.id(), null, ""));
    public final Entry<Car> car7 = made(new Car("7", ""));
    public final Entry<Car> car8 = made(new Car("8", ""));
    public final Entry<Position> rods = made(new Position(design.id(), null, PartKind.RODS, "rods", 1, true));
    public final Entry<Position> head = made(new Position(design.id(), null, PartKind.HEAD, "head", 2, true));
    public final Entry<PartDesign> rodDesign =
            made(new PartDesign("forged rods", PartKind.RODS, "", "", false, true, "", null));
    public final Entry<PartDesign> gasketDesign =
            made(new PartDesign("steel gasket", PartKind.HEAD_GASKET, "", "", true, false, "", null));
    public final Entry<Part> r1 = part("R1", rodDesign);
    public final Entry<Part> r2 = part("R2", rodDesign);
    public final Entry<Part> g1 = part("G1", gasketDesign);
    public final Entry<Event> event = made(new Event(
            "Spring meeting",
            "the old airfield",
            LocalDate.of(2026, 3, 1),
            LocalDate.of(2026, 3, 2),
            LONDON,
            null,
            ""));
    public final Entry<PlannedRun> race1 =
            made(new PlannedRun(event.id(), 1, RunKind.RACE, "Race 1", LocalDate.of(2026, 3, 1), null, null));

    public List<Entry<?>> all() {
        return List.of(design, e1, e2, car7, car8, rods, head, rodDesign, gasketDesign, r1, r2, g1, event, race1);
    }

    public static <F extends Fact> Entry<F> made(F fact) {
        return new Entry<>(new Id<>(UUID.randomUUID()), fact, Standing.IN_FORCE, null, 1);
    }

    public static <F extends Fact> Entry<F> again(Entry<F> entry, F fact) {
        return new Entry<>(entry.id(), fact, Standing.IN_FORCE, null, entry.rev() + 1);
    }

    public static <F extends Fact> Entry<F> struck(Entry<F> entry) {
        return new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, "typed twice", entry.rev() + 1);
    }

    public static Entry<Part> part(String mark, Entry<PartDesign> design) {
        return made(new Part(mark, design.id(), "", "", null, null, null, null, null, null, ""));
    }

    public static Moment hour(int hour) {
        return Moment.of(MIDNIGHT.plusSeconds(3_600L * hour), LONDON);
    }

    public static @Nullable Moment hourOrOpen(int hour) {
        return hour < 0 ? null : hour(hour);
    }

    /** @param to hour, or -1 while it is fitted */
    public static Fitment fitment(Entry<Part> part, Entry<Engine> engine, Entry<Position> position, int from, int to) {
        return new Fitment(
                part.id(), engine.id(), null, position.id(), hour(from), hourOrOpen(to), null, null, "", "", false);
    }

    public static EngineInCar inCar(Entry<Engine> engine, Entry<Car> car, int from, int to) {
        return new EngineInCar(engine.id(), car.id(), hour(from), hourOrOpen(to), "");
    }

    public Run run(String name, @Nullable Entry<Car> car, @Nullable Entry<PlannedRun> planned, int hour) {
        return run(e1.id(), event.id(), name, car, planned, hour);
    }

    public static Run run(
            Id<Engine> engine,
            Id<Event> event,
            String name,
            @Nullable Entry<Car> car,
            @Nullable Entry<PlannedRun> planned,
            int hour) {
        return new Run(
                engine,
                car == null ? null : car.id(),
                event,
                planned == null ? null : planned.id(),
                RunKind.RACE,
                name,
                hour(hour),
                StartKnown.TYPED,
                null,
                null,
                new RunningTime(1_500_000),
                KnownBy.all(HowKnown.TIMED),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                DriverAsked.NOT_ASKED,
                "",
                "",
                "",
                null);
    }
}
