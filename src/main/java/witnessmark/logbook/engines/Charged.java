package witnessmark.logbook.engines;

import witnessmark.domain.HowKnown;
import witnessmark.domain.PriorLife;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;

/** What one counted charge adds to a life, kept apart by how it is known. */
final class Charged {
    private Charged() {}

    static Life life(Counter counter, Charge charge) {
        int runs = charge.source().fact() instanceof PriorLife ? 0 : 1;
        if (charge.how() == HowKnown.TOLD) {
            return new Life(counter, 0, charge.amount(), charge.lowest(), charge.highest(), 0, false, runs, 0);
        }
        boolean estimated = charge.how() == HowKnown.ESTIMATED;
        long known = estimated ? 0 : charge.amount();
        return new Life(counter, known, 0, 0, 0, estimated ? charge.amount() : 0, false, runs, 0);
    }
}
