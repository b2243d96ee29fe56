package witnessmark.logbook.run;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.quantity.Moment;

/** Looks back over the runs in force: the last of a car, of an engine, what an engine usually reads. */
final class RunsBefore {
    private static final int LOOK_BACK = 12;

    private final List<Entry<Run>> latestFirst;
    private final Facts facts;
    private final @Nullable Moment until;

    RunsBefore(Facts facts) {
        this(facts, null);
    }

    /** @param until the last run is the last that went out before this; null for the last of all */
    RunsBefore(Facts facts, @Nullable Moment until) {
        this.facts = facts;
        this.until = until;
        List<Entry<Run>> runs = new ArrayList<>(facts.of(Run.class).where(run -> run.perhapsSame() == null));
        runs.sort(Comparator.comparing((Entry<Run> run) -> run.fact().start()).reversed());
        this.latestFirst = runs;
    }

    /** The facts looked back over. */
    Facts facts() {
        return facts;
    }

    Optional<Entry<Run>> last(Predicate<Run> asked) {
        Moment before = until;
        return latestFirst.stream()
                .filter(run -> before == null || run.fact().start().isBefore(before))
                .filter(run -> asked.test(run.fact()))
                .findFirst();
    }

    /** What the last runs of an engine on the track read, newest first, where they read it. */
    List<Long> readings(Id<Engine> engine, boolean onDyno, Function<Run, @Nullable Long> reading) {
        return readings(run -> run.engine().equals(engine) && (run.car() == null) == onDyno, reading);
    }

    /** What the last of the runs asked for read, newest first, where they read it. */
    List<Long> readings(Predicate<Run> asked, Function<Run, @Nullable Long> reading) {
        List<Long> found = new ArrayList<>();
        for (Entry<Run> run : latestFirst) {
            Long value = asked.test(run.fact()) ? reading.apply(run.fact()) : null;
            if (value != null && found.size() < LOOK_BACK) {
                found.add(value);
            }
        }
        return found;
    }

    /** The engine in a car at a moment. */
    Optional<EngineInCar> engineIn(Id<Car> car, Moment at) {
        return facts.of(EngineInCar.class)
                .inForce()
                .map(Entry::fact)
                .filter(in -> in.car().equals(car) && !in.from().isAfter(at))
                .filter(in -> {
                    Moment to = in.to();
                    return to == null || to.isAfter(at);
                })
                .findFirst();
    }

    /** The last change of engine in this car at a time of the given day, if another engine was in it before. */
    Optional<EngineInCar> engineChangedOn(Id<Car> car, LocalDate day) {
        return changesOn(facts, car, day)
                .filter(in -> !in.from().dayOnly())
                .max(Comparator.comparing(EngineInCar::from));
    }

    /** The changes of engine in a car on a day: those when it had had another engine before. */
    static Stream<EngineInCar> changesOn(Facts facts, Id<Car> car, LocalDate day) {
        List<EngineInCar> stays = facts.of(EngineInCar.class)
                .inForce()
                .map(Entry::fact)
                .filter(in -> in.car().equals(car))
                .toList();
        return stays.stream()
                .filter(in -> in.from().day().equals(day))
                .filter(in -> stays.stream().anyMatch(was -> was.from().isBefore(in.from())));
    }
}
