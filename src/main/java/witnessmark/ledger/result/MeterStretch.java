package witnessmark.ledger.result;

import witnessmark.domain.Entry;
import witnessmark.domain.MeterReading;
import witnessmark.domain.Part;

/**
 * An hour meter from one reading to the next, held against the logbook. Times are in milliseconds.
 *
 * @param meter which meter
 * @param from the reading it begins with
 * @param to the reading it ends with
 * @param shown what the meter counted on; below 0 when it shows less than before
 * @param lowest the least the runs charged to the meter come to
 * @param highest the most they come to
 * @param runs how many runs were charged
 * @param finding what the two say of each other
 */
public record MeterStretch(
        Entry<Part> meter,
        Entry<MeterReading> from,
        Entry<MeterReading> to,
        long shown,
        long lowest,
        long highest,
        int runs,
        Finding finding) {
    /** What a meter and the logbook say of each other. */
    public enum Finding {
        AGREE,
        /** The meter counted less than was logged: it was unplugged or stood still, or a run is too long or there twice. */
        STOOD_STILL,
        /** The meter counted more than was logged: something ran that nobody logged. */
        NOT_LOGGED,
        /** It shows less than before: another meter, or a figure read or typed wrongly. */
        BACKWARDS,
        /** It was in no car for any of the time, so that no run is charged to it. */
        NOT_FITTED
    }

    /** How far the two are apart: what was logged and the meter did not count, or the other way; 0 when they agree. */
    public long apart() {
        return switch (finding) {
            case STOOD_STILL -> lowest - shown;
            case NOT_LOGGED -> shown - highest;
            case BACKWARDS -> -shown;
            case AGREE, NOT_FITTED -> 0;
        };
    }

    /** Whether the two are apart and whoever read the meter did not say why. */
    public boolean unexplained() {
        return finding != Finding.AGREE && to.fact().note().isBlank();
    }
}
