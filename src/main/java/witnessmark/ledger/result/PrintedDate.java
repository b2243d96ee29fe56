package witnessmark.ledger.result;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import witnessmark.domain.Id;
import witnessmark.domain.Part;

/**
 * A date printed on a part, which no plan may pass.
 *
 * @param part which part
 * @param useBy the last day it may be used
 * @param day the day looked at
 */
public record PrintedDate(Id<Part> part, LocalDate useBy, LocalDate day) implements MarkReason {
    /** Days left, the last day not counted; less than 0 once it is past. */
    public long daysLeft() {
        return ChronoUnit.DAYS.between(day, useBy);
    }

    @Override
    public MarkState state() {
        return day.isAfter(useBy) ? MarkState.OVER : MarkState.WITHIN;
    }
}
