package witnessmark.ledger.result;

import witnessmark.domain.Entry;
import witnessmark.domain.StockBatch;

/**
 * How much of a batch is there on a day. A count may be below nothing where entries contradict each other.
 *
 * @param batch which batch
 * @param onShelf what came less what went
 * @param kept what open jobs still want of it, that is, beyond what was taken for them already
 * @param pastUse whether its printed date is over: nothing of it counts as free
 * @param freeOfDesign what is free of every batch of the design together
 * @param leastOfDesign how many of the design the team wants on the shelf; 0 when it said none
 * @param onOrder how many of the design are on order
 */
public record StockLevel(
        Entry<StockBatch> batch,
        int onShelf,
        int kept,
        boolean pastUse,
        int freeOfDesign,
        int leastOfDesign,
        int onOrder) {
    /** What may be taken for something else. */
    public int free() {
        return pastUse ? 0 : onShelf - kept;
    }

    /** How many of the design are missing to what the team wants on the shelf; 0 when none is. */
    public int missing() {
        return Math.max(0, leastOfDesign - freeOfDesign);
    }

    /** Whether there is less of the design than the team wants, or than its open jobs do. */
    public boolean isShort() {
        return missing() > 0 || freeOfDesign < 0;
    }
}
