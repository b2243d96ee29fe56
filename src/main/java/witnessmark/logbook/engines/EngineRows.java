package witnessmark.logbook.engines;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Position;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.UnprovenBuilds;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** What the list says of an engine. */
final class EngineRows {
    private final Facts facts;
    private final LifeLedger ledger;
    private final WorstMarks worst;
    private final UnprovenBuilds unproven;
    private final Heads heads;
    private final Moment now;

    EngineRows(LifeLedger ledger) {
        this.facts = ledger.facts();
        this.ledger = ledger;
        this.worst = new WorstMarks(ledger);
        this.unproven = new UnprovenBuilds(ledger);
        this.heads = new Heads(ledger);
        this.now = ledger.asOf().last();
    }

    EngineRow row(Entry<Engine> engine) {
        Entry<EngineInCar> stay = ledger.carOf(engine.id(), now).orElse(null);
        Map<Id<Position>, Entry<Fitment>> fitted = ledger.fittedAt(engine.id(), now);
        List<MarkOn> marks = marks(engine.id());
        return new EngineRow(
                engine,
                facts.of(EngineDesign.class).get(engine.fact().design()),
                stay,
                stay == null ? null : facts.of(Car.class).get(stay.fact().car()).name(),
                open(engine.id()),
                ledger.firstEngineEntry(engine.id()).orElse(null),
                ledger.engineLife(engine.id(), Counter.RUNNING),
                ledger.lastClosed(engine.id(), Limits.REBUILD).orElse(null),
                ledger.sinceRebuild(engine.id(), Limits.REBUILD, Counter.RUNNING),
                heads.on(engine.id()),
                fitted.size(),
                ledger.emptyPositions(engine.id(), now).size(),
                marks.isEmpty() ? null : marks.get(0),
                unproven.of(engine.id()),
                withoutLimit(fitted, marks));
    }

    /** Every mark of an engine and of what is in it, worst first. */
    List<MarkOn> marks(Id<Engine> engine) {
        return worst.on(engine);
    }

    private static int withoutLimit(Map<Id<Position>, Entry<Fitment>> fitted, List<MarkOn> marks) {
        Set<Id<Part>> rest = new HashSet<>();
        fitted.values().forEach(fitment -> rest.add(fitment.fact().part()));
        marks.forEach(on -> rest.remove(on.mark().part()));
        return rest.size();
    }

    /** The build an engine was opened for and that was not closed by the end of the day looked at. */
    private @Nullable Entry<Build> open(Id<Engine> engine) {
        return facts.of(Build.class)
                .inForce()
                .filter(build -> build.fact().engine().equals(engine))
                .filter(build -> !build.fact().opened().isAfter(now))
                .filter(build -> {
                    Moment closed = build.fact().closed();
                    return closed == null || closed.isAfter(now);
                })
                .reduce((earlier, later) -> later)
                .orElse(null);
    }
}
