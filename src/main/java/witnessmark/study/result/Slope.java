package witnessmark.study.result;

import org.jspecify.annotations.Nullable;

/**
 * A straight line through readings.
 *
 * @param perHour by how much it rises for each hour of running, in the unit of the readings
 * @param least the least that may be, nine times in ten; null where the readings are too few to say
 * @param most the most that may be
 * @param atNone where the line is at no running
 */
public record Slope(
        double perHour, @Nullable Double least, @Nullable Double most, double atNone) {
    public double at(double hours) {
        return atNone + perHour * hours;
    }

    /** Whether it may be level for all that is known. */
    public boolean mayBeLevel() {
        return least == null || most == null || least <= 0 && most >= 0;
    }
}
