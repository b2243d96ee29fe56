package witnessmark.cost.result;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.quantity.Money;

/**
 * Money that is not settled yet.
 *
 * @param line of which cost
 * @param what what is to be done with it
 * @param until the last day to do it, or null where there is none
 * @param amount how much, in the currency of the line
 * @param home the same in the home currency, or null where nobody wrote down the rate of its day
 */
public record ToSettle(
        Entry<CostLine> line,
        What what,
        @Nullable LocalDate until,
        Money amount,
        @Nullable Money home) {
    /** What is to be done. */
    public enum What {
        /** To be asked back. */
        ASK_BACK,
        /** Some came back; the rest is to be asked back. */
        ASK_BACK_REST,
        /** To be asked back, though the last day is past. */
        ASK_BACK_LATE,
        /** To be charged to a customer. */
        CHARGE,
        /** Kept for later, to be used. */
        USE;

        /** What it is summed up with: all that is to be asked back together. */
        public What together() {
            return this == ASK_BACK_REST || this == ASK_BACK_LATE ? ASK_BACK : this;
        }
    }
}
