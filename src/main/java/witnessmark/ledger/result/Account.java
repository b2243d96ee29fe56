package witnessmark.ledger.result;

import java.util.List;
import witnessmark.quantity.Counter;

/**
 * A life with every entry behind it, in the order they happened. The charges add up to the life exactly.
 *
 * @param counter counted in what
 * @param life the sum
 * @param charges the life carried in first where there is one, then by time
 */
public record Account(Counter counter, Life life, List<Charge> charges) {
    public Account {
        charges = List.copyOf(charges);
    }

    /** The lines that are not in the sum but ask for somebody's decision. */
    public List<Charge> toSettle() {
        return charges.stream()
                .filter(charge ->
                        charge.counted() == Counted.PERHAPS_SAME || charge.counted() == Counted.BEFORE_PRIOR_LIFE)
                .toList();
    }
}
