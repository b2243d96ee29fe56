package witnessmark.cost.result;

import java.util.Currency;
import java.util.List;

/**
 * All costs up to a day, each cut in pieces that are counted once.
 *
 * @param home the currency of every piece
 * @param pieces in the order of their lines
 * @param noRate what could not be counted
 */
public record CostBook(Currency home, List<Piece> pieces, List<NoRate> noRate) {
    public CostBook {
        pieces = List.copyOf(pieces);
        noRate = List.copyOf(noRate);
    }
}
