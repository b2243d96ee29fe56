package witnessmark.ledger.result;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Chase;
import witnessmark.domain.Entry;
import witnessmark.domain.PartDesign;
import witnessmark.domain.SentOut;
import witnessmark.quantity.Moment;

/**
 * Something that is out with others on a day.
 *
 * @param sent what says so
 * @param mark the mark of the part, or the number of the engine; empty for parts on order
 * @param design what the part is, or what is on order; null for an engine
 * @param promised the day it was promised for last, or null when none was
 * @param chase the last time somebody asked after it, or null when nobody did
 * @param heard when the other side was last heard of: the last answer, else when it was sent
 * @param daysLate whole days since the day it was promised for; 0 when it is not late or nothing was promised
 * @param daysSilent whole days since the other side was last heard of
 */
public record Away(
        Entry<SentOut> sent,
        String mark,
        @Nullable PartDesign design,
        @Nullable LocalDate promised,
        @Nullable Entry<Chase> chase,
        Moment heard,
        long daysLate,
        long daysSilent) {
    /** Whether the day it was promised for is over. */
    public boolean late() {
        return daysLate > 0;
    }
}
