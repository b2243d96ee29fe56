package witnessmark.ledger;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Fact;
import witnessmark.domain.OverRev;
import witnessmark.domain.Run;
import witnessmark.domain.Work;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;

/**
 * Bounds within which a four-stroke racing engine can read at all, and its metal be worked: common practice, no source.
 * A figure outside them is a slip of the pen or a wrong unit. What is usual for one engine is another matter.
 */
public final class Possible {
    public static final Range<EngineSpeed> SPEED = new Range<>(new EngineSpeed(500), new EngineSpeed(20_000));
    public static final Range<Integer> CYLINDERS = new Range<>(1, 16);
    public static final Range<Integer> LAPS = new Range<>(0, 400);
    public static final Range<Integer> OVER_REVS = new Range<>(0, 200);
    public static final Range<Integer> HEAT_CYCLES = new Range<>(0, 20);
    public static final Range<Integer> RACE_STARTS = new Range<>(0, 20);
    public static final Range<Temperature> WATER = new Range<>(new Temperature(273_150), new Temperature(413_150));
    public static final Range<Temperature> OIL = new Range<>(new Temperature(273_150), new Temperature(453_150));
    public static final Range<Temperature> AMBIENT = new Range<>(new Temperature(243_150), new Temperature(328_150));
    public static final Range<Pressure> OIL_PRESSURE = new Range<>(new Pressure(0), new Pressure(10_000_000));
    public static final Range<Volume> OIL_ADDED = new Range<>(new Volume(0), new Volume(10_000_000));
    public static final Range<Distance> DISTANCE = new Range<>(new Distance(0), new Distance(2_000_000));

    /** One skim takes hundredths; ten millimetres is another head. */
    private static final Range<Length> REMOVED = new Range<>(new Length(1_000), new Length(10_000_000));

    private static final Range<Length> LEFT = new Range<>(new Length(1_000), new Length(1_000_000_000));

    private static final Map<Class<? extends Fact>, Map<String, Range<?>>> FIGURES = Map.of(
            Run.class,
            Map.ofEntries(
                    Map.entry("laps", LAPS),
                    Map.entry("raceStarts", RACE_STARTS),
                    Map.entry("heatCycles", HEAT_CYCLES),
                    Map.entry("overRevs", OVER_REVS),
                    Map.entry("highest", SPEED),
                    Map.entry("waterHighest", WATER),
                    Map.entry("oilHighest", OIL),
                    Map.entry("oilPressure", OIL_PRESSURE),
                    Map.entry("oilAdded", OIL_ADDED),
                    Map.entry("ambient", AMBIENT),
                    Map.entry("distance", DISTANCE)),
            EngineDesign.class,
            Map.of("cylinders", CYLINDERS, "redLine", SPEED, "overRevAbove", SPEED),
            OverRev.class,
            Map.of("peak", SPEED),
            Work.class,
            Map.of("removed", REMOVED, "left", LEFT));

    private Possible() {}

    /**
     * From a least to a most, both possible.
     *
     * @param <T> what is measured
     */
    public record Range<T extends Comparable<T>>(T low, T high) {
        /** Whether a value lies within; one of another kind does not. */
        @SuppressWarnings("unchecked") // of the class of the bounds
        public boolean holds(Object value) {
            return low.getClass().isInstance(value) && low.compareTo((T) value) <= 0 && high.compareTo((T) value) >= 0;
        }
    }

    /** The bounds of a figure of a kind of entry, by the name its record has for it; empty when none are known. */
    static Optional<Range<?>> of(Class<? extends Fact> kind, String figure) {
        @Nullable Range<?> range = FIGURES.getOrDefault(kind, Map.of()).get(figure);
        return Optional.ofNullable(range);
    }
}
