package witnessmark.logbook.faces;

import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * What a part ran between two moments.
 *
 * @param millis running time
 * @param cycles heat cycles
 * @param cyclesKnown whether every run in between says its heat cycles
 */
public record RunBetween(long millis, long cycles, boolean cyclesKnown) {
    private static final double HOUR = 3_600_000;

    public double hours() {
        return millis / HOUR;
    }

    static RunBetween of(LifeLedger ledger, Id<Part> part, Moment from, Moment to) {
        Life cycles = ledger.since(part, Counter.HEAT_CYCLES, from);
        Life after = ledger.since(part, Counter.HEAT_CYCLES, to);
        return new RunBetween(
                ledger.since(part, Counter.RUNNING, from).total()
                        - ledger.since(part, Counter.RUNNING, to).total(),
                cycles.total() - after.total(),
                cycles.runsNotRead() == after.runsNotRead());
    }
}
