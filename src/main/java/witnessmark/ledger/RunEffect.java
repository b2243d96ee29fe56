package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.ledger.result.Effect;
import witnessmark.ledger.result.EffectOfRun;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LifeChange;
import witnessmark.ledger.result.LimitUse;
import witnessmark.quantity.Counter;

/** What a run does to lives and limits, shown before it is saved and after. */
public final class RunEffect {
    private final LifeLedger before;
    private final LifeLedger after;
    private final Limits limitsBefore;
    private final Limits limitsAfter;

    private RunEffect(LifeLedger before, LifeLedger after) {
        this.before = before;
        this.after = after;
        this.limitsBefore = new Limits(before);
        this.limitsAfter = new Limits(after);
    }

    /**
     * What changes when a run is written, corrected or struck out. Limits are those on what was fitted when it went
     * out; of a run corrected, when it went out before the correction too.
     *
     * @param before the ledger of the facts without the change
     * @param candidate the run as it is to stand
     */
    public static EffectOfRun of(LifeLedger before, Entry<Run> candidate) {
        LifeLedger after = before.after(before.facts().with(List.of(candidate)));
        Entry<Run> written = before.facts().of(Run.class).find(candidate.id()).orElse(null);
        return new RunEffect(before, after).between(written, candidate);
    }

    private EffectOfRun between(@Nullable Entry<Run> written, Entry<Run> candidate) {
        Set<Seat> seats = new LinkedHashSet<>(seats(candidate.fact()));
        if (written != null) {
            seats.addAll(seats(written.fact()));
        }
        List<Id<Part>> charged = seats.stream()
                .map(Seat::part)
                .flatMap(Stream::ofNullable)
                .distinct()
                .toList();
        return new EffectOfRun(changes(candidate.fact().engine()), charged, effects(List.copyOf(seats)));
    }

    private List<Seat> seats(Run run) {
        List<Seat> seats = new ArrayList<>(limitsAfter.seats().of(run.engine(), run.start()));
        if (run.car() != null) {
            seats.addAll(limitsAfter.seats().ofCar(run.car(), run.start()));
        }
        return seats;
    }

    private List<LifeChange> changes(Id<Engine> engine) {
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

    /** The same limits hold before and after, since only a run changes; each is used more, or not. */
    private List<Effect> effects(List<Seat> seats) {
        List<LimitUse> without = limitsBefore.uses(seats);
        List<LimitUse> with = limitsAfter.uses(seats);
        List<Effect> effects = new ArrayList<>();
        for (int i = 0; i < with.size(); i++) {
            if (!without.get(i).used().equals(with.get(i).used())) {
                effects.add(new Effect(without.get(i), with.get(i)));
            }
        }
        effects.sort(Comparator.comparing(Effect::after, limitsAfter.worst()));
        return effects;
    }
}
