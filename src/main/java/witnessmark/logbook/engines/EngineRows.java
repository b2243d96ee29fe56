package witnessmark.logbook.engines;

import java.util.ArrayList;
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
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.UnprovenBuilds;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkState;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** What the list says of an engine. */
final class EngineRows {
    private final Facts facts;
    private final LifeLedger ledger;
    private final Limits limits;
    private final UnprovenBuilds unproven;
    private final Heads heads;
    private final Moment now;

    EngineRows(LifeLedger ledger) {
        this.facts = ledger.facts();
        this.ledger = ledger;
        this.limits = new Limits(ledger);
        this.unproven = new UnprovenBuilds(ledger);
        this.heads = new Heads(ledger);
        this.now = ledger.asOf().last();
    }

    EngineRow row(Entry<Engine> engine) {
        Entry<EngineInCar> stay = ledger.carOf(engine.id(), now).orElse(null);
        Map<Id<Position>, Entry<Fitment>> fitted = ledger.fittedAt(engine.id(), now);
        List<NearestLimit> limitsOn = limits(engine.id());
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
                limitsOn.isEmpty() ? null : limitsOn.get(0),
                unproven.of(engine.id()),
                withoutLimit(fitted, limitsOn));
    }

    /**
     * Every limit on an engine and what is in it, worst first; what is past its limit for certain before what is only
     * when told running is taken at its high end.
     */
    List<NearestLimit> limits(Id<Engine> engine) {
        List<NearestLimit> worstFirst =
                limits.nearest(engine).stream().map(this::nearest).toList();
        List<NearestLimit> all = new ArrayList<>();
        worstFirst.stream().filter(EngineRows::certainlyOver).forEach(all::add);
        worstFirst.stream().filter(limit -> !certainlyOver(limit)).forEach(all::add);
        return all;
    }

    private static boolean certainlyOver(NearestLimit limit) {
        return limit.state() == MarkState.OVER && !limit.perhapsOver();
    }

    private NearestLimit nearest(LimitUse use) {
        Part part = use.part() == null ? null : facts.of(Part.class).get(use.part());
        PartDesign design = part == null ? null : facts.of(PartDesign.class).get(part.design());
        return new NearestLimit(
                use,
                part == null ? null : part.mark(),
                use.position() == null
                        ? null
                        : facts.of(Position.class).get(use.position()).name(),
                design != null && design.canWreck());
    }

    private static int withoutLimit(Map<Id<Position>, Entry<Fitment>> fitted, List<NearestLimit> limits) {
        Set<Id<Part>> rest = new HashSet<>();
        fitted.values().forEach(fitment -> rest.add(fitment.fact().part()));
        limits.forEach(limit -> rest.remove(limit.use().part()));
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
