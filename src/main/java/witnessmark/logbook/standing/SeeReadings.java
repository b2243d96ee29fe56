package witnessmark.logbook.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.ahead.Ahead;
import witnessmark.ledger.ahead.Step;
import witnessmark.ledger.result.Expected;
import witnessmark.quantity.Counter;
import witnessmark.study.Trends;
import witnessmark.study.result.Call;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.PlaceTrend;

/**
 * Readings that ask for a look before any limit is passed: a place that gets worse and stands off those beside it, of any
 * engine in a car; and of an engine that goes a limit that its line may meet by the end of the next event. What is past its
 * limit is a mark and told there; all else stands under the trends of the engine.
 */
final class SeeReadings {
    private static final double MILLIS_IN_HOUR = 3_600_000;

    private final LifeLedger ledger;
    private final Set<Id<Engine>> going;
    private final Trends trends;
    private final Ahead ahead;

    SeeReadings(LifeLedger ledger, Set<Id<Engine>> going) {
        this.ledger = ledger;
        this.going = going;
        this.trends = new Trends(ledger);
        this.ahead = new Ahead(ledger);
    }

    /** Engine by engine in the order of their numbers, what stands off first. */
    List<StillOpen.Going> all() {
        List<StillOpen.Going> all = new ArrayList<>();
        ledger.facts()
                .of(Engine.class)
                .inForce()
                .filter(engine ->
                        ledger.carOf(engine.id(), ledger.asOf().last()).isPresent())
                .sorted(Comparator.comparing(engine -> engine.fact().number()))
                .forEach(engine -> add(all, engine));
        return all;
    }

    private void add(List<StillOpen.Going> into, Entry<Engine> engine) {
        for (KindTrends kind : trends.ofEngine(engine.id())) {
            for (PlaceTrend place : kind.places()) {
                if (place.call() == Call.LOOK || place.call() == Call.WORSE && isNear(engine, place)) {
                    into.add(new StillOpen.Going(engine, kind, place));
                }
            }
        }
    }

    /** Whether its line may meet a limit while the engine runs at the next event. */
    private boolean isNear(Entry<Engine> engine, PlaceTrend place) {
        LimitAhead limit = place.next();
        Double soonest = limit == null ? null : limit.soonest();
        if (soonest == null || !going.contains(engine.id())) {
            return false;
        }
        List<Step> next = ahead.ofEngine(engine.id()).stream()
                .filter(step -> !step.after())
                .toList();
        return ahead.expected(next, Counter.RUNNING)
                .map(Expected::high)
                .filter(millis -> soonest * MILLIS_IN_HOUR <= millis)
                .isPresent();
    }
}
