package witnessmark.ledger;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Limit;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.Trigger;
import witnessmark.quantity.Moment;

/**
 * The day taken for today. An entry counts when it happened by the end of that day; an end that came later is not yet
 * known, so that a part taken off next week reads as still fitted.
 */
public final class AsOf {
    private final LocalDate day;
    private final ZoneId zone;
    /** Worked out once: it is asked for every entry. */
    private final Moment last;

    /**
     * @param day the last day that counts
     * @param zone the zone whose days are meant: the team's
     */
    public AsOf(LocalDate day, ZoneId zone) {
        this.day = day;
        this.zone = zone;
        Instant next = day.plusDays(1).atStartOfDay(zone).toInstant();
        this.last = Moment.of(next.minusMillis(1), zone);
    }

    public LocalDate day() {
        return day;
    }

    public ZoneId zone() {
        return zone;
    }

    /**
     * The last millisecond that counts: the one before the next day begins there, so that an hour which the clocks
     * show twice at midnight counts whole.
     */
    public Moment last() {
        return last;
    }

    /** Whether something that happened then counts; what has no moment always does. */
    public boolean counts(@Nullable Moment happened) {
        return happened == null || !happened.isAfter(last);
    }

    /** Whether a limit stands on this day: from its first day to its last, both included. */
    public boolean stands(Limit limit) {
        return stands(day, limit.validFrom(), limit.validTo());
    }

    /** Whether a limit of readings stands on this day. */
    public boolean stands(ReadingLimit limit) {
        return stands(day, limit.validFrom(), limit.validTo());
    }

    /** Whether a rule stood on a day something happened. */
    static boolean stood(Trigger rule, LocalDate then) {
        return stands(then, rule.validFrom(), rule.validTo());
    }

    private static boolean stands(LocalDate day, LocalDate from, @Nullable LocalDate to) {
        return !day.isBefore(from) && (to == null || !day.isAfter(to));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof AsOf that && that.day.equals(day) && that.zone.equals(zone);
    }

    @Override
    public int hashCode() {
        return Objects.hash(day, zone);
    }

    @Override
    public String toString() {
        return day + " in " + zone;
    }
}
