package witnessmark.fit.face;

import org.jspecify.annotations.Nullable;
import witnessmark.fit.result.face.Comeback;
import witnessmark.fit.result.face.Range;
import witnessmark.quantity.Length;

/**
 * How fast a zone comes back: what it fell by, over what was run meanwhile, and when it meets its limit if it goes on
 * like this. Its ends are those of readings that are right to half a step either way.
 */
public final class Comebacks {
    private static final double MILLIMETRE = 1_000_000;

    private Comebacks() {}

    /**
     * @param from depth at the beginning
     * @param now depth at the end
     * @param finest step of what was measured with
     * @param hours run meanwhile, or null
     * @param cycles heat cycles meanwhile, or null
     * @param limit how deep it may be, or null
     */
    public static Comeback of(
            Length from,
            Length now,
            Length finest,
            @Nullable Double hours,
            @Nullable Long cycles,
            @Nullable Length limit) {
        double step = finest.nanometres() / MILLIMETRE;
        double fell = (now.nanometres() - from.nanometres()) / MILLIMETRE;
        Range grown = new Range(Math.max(0, fell - step), Math.max(0, fell), Math.max(0, fell + step));
        Range perHour = hours == null || hours <= 0 ? null : over(grown, hours);
        Range perCycle = cycles == null || cycles <= 0 ? null : over(grown, cycles);
        return new Comeback(from, now, hours, cycles, perHour, perCycle, limit, left(now, step, perHour, limit));
    }

    private static Range over(Range grown, double use) {
        return new Range(grown.low() / use, grown.likely() / use, grown.high() / use);
    }

    private static @Nullable Range left(Length now, double step, @Nullable Range perHour, @Nullable Length limit) {
        if (perHour == null || limit == null || perHour.likely() <= 0) {
            return null;
        }
        double room = (limit.nanometres() - now.nanometres()) / MILLIMETRE;
        double most = perHour.low() <= 0 ? Double.POSITIVE_INFINITY : Math.max(0, room + step / 2) / perHour.low();
        return new Range(Math.max(0, room - step / 2) / perHour.high(), Math.max(0, room) / perHour.likely(), most);
    }
}
