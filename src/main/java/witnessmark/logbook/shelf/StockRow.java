package witnessmark.logbook.shelf;

import witnessmark.domain.PartDesign;
import witnessmark.ledger.result.StockLevel;

/**
 * One batch on the shelf.
 *
 * @param level how much of it is there
 * @param design what it is
 */
public record StockRow(StockLevel level, PartDesign design) {
    /** Whether anything of it is there or wanted: an empty batch runs short only where no other is there. */
    public boolean holds() {
        return level.onShelf() != 0 || level.kept() != 0;
    }
}
