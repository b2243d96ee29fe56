package witnessmark.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.ledger.result.EffectOfRun;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LifeChange;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkChange;
import witnessmark.ledger.result.MarkState;
import witnessmark.quantity.Counter;

/** What a run does to lives and marks, shown before it is saved and after. */
public final class RunEffect {
    /** What a mark is held against, and what it is on: the same before and after. */
    private record Key(String against, @Nullable Id<?> subject) {}

    private final LifeLedger before;
    private final LifeLedger after;
    private final Seats seats;
    private final Set<Id<Engine>> engines = new LinkedHashSet<>();
    private final Set<Id<Car>> cars = new LinkedHashSet<>();
    private final Set<Id<Part>> charged = new LinkedHashSet<>();

    private RunEffect(LifeLedger before, LifeLedger after) {
        this.before = before;
        this.after = after;
        this.seats = new Seats(after);
    }

    /**
     * What changes when a run is written, corrected or struck out. Marks are those on the engine and the car, on what is
     * fitted there, and on what was fitted when the run went out; of a run corrected, when it went out before the
     * correction too.
     *
     * @param before the ledger of the facts without the change
     * @param candidate the run as it is to stand
     */
    public static EffectOfRun of(LifeLedger before, Entry<Run> candidate) {
        RunEffect effect = new RunEffect(before, before.after(before.facts().with(List.of(candidate))));
        effect.touch(candidate.fact());
        before.facts().of(Run.class).find(candidate.id()).map(Entry::fact).ifPresent(effect::touch);
        return effect.on(candidate.fact().engine());
    }

    private void touch(Run run) {
        engines.add(run.engine());
        List<Seat> there = new ArrayList<>(seats.of(run.engine(), run.start()));
        if (run.car() != null) {
            cars.add(run.car());
            there.addAll(seats.ofCar(run.car(), run.start()));
        }
        for (Seat seat : there) {
            if (seat.part() != null) {
                charged.add(seat.part());
            }
        }
    }

    private EffectOfRun on(Id<Engine> engine) {
        Map<Key, Mark> without = marks(new Marks(before));
        Map<Key, Mark> with = marks(new Marks(after));
        List<Id<Part>> bare = new ArrayList<>(charged);
        with.values().forEach(mark -> bare.remove(mark.part()));
        return new EffectOfRun(lives(engine), List.copyOf(charged), bare, changes(without, with));
    }

    private List<LifeChange> lives(Id<Engine> engine) {
        List<LifeChange> changes = new ArrayList<>();
        for (Counter counter : Counter.fedByRuns()) {
            Life without = before.engineLife(engine, counter);
            Life with = after.engineLife(engine, counter);
            if (!without.equals(with)) {
                changes.add(new LifeChange(without, with));
            }
        }
        return changes;
    }

    private Map<Key, Mark> marks(Marks marks) {
        Map<Key, Mark> all = new LinkedHashMap<>();
        engines.forEach(engine -> marks.ofEngine(engine).forEach(mark -> all.put(key(mark), mark)));
        cars.forEach(car -> marks.ofCar(car).forEach(mark -> all.put(key(mark), mark)));
        charged.forEach(part -> marks.ofPart(part).forEach(mark -> all.put(key(mark), mark)));
        return all;
    }

    private static Key key(Mark mark) {
        return new Key(
                mark.reason().against(),
                mark.part() != null ? mark.part() : mark.engine() != null ? mark.engine() : mark.car());
    }

    /** What is to come moves with the day; what the run does is what changes for another reason, and what holds. */
    private static List<MarkChange> changes(Map<Key, Mark> without, Map<Key, Mark> with) {
        List<MarkChange> changes = new ArrayList<>();
        with.forEach((key, after) -> {
            Mark before = without.get(key);
            if (before == null
                    || after.state() == MarkState.HELD
                    || !before.reason().equals(after.reason())) {
                changes.add(new MarkChange(before, after));
            }
        });
        changes.sort((one, other) -> Marks.worst().compare(one.after(), other.after()));
        return changes;
    }
}
