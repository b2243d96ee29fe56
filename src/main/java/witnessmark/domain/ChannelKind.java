package witnessmark.domain;

import java.util.List;
import java.util.stream.Stream;

/**
 * What a channel of a logger measures, with the unit it is reckoned in and two bands of figures: what is plausible as a
 * rule, by which a wrong unit is noticed, and what a sound sensor can say at all, beyond which a figure is none. Bands:
 * common practice, no source.
 */
public enum ChannelKind implements Coded {
    ENGINE_SPEED("engine speed", ChannelUnit.RPM, 0, 15_000, 0, 15_000),
    THROTTLE("throttle", ChannelUnit.PERCENT, 0, 100, -10, 110),
    CAR_SPEED("car speed", ChannelUnit.KILOMETRE_PER_HOUR, 0, 300, -1, 400),
    LATERAL("lateral acceleration", ChannelUnit.G, -3, 3, -6, 6),
    LONGITUDINAL("longitudinal acceleration", ChannelUnit.G, -3, 3, -6, 6),
    OIL_PRESSURE("oil pressure", ChannelUnit.BAR, 0, 8, -0.6, 16),
    OIL_TEMPERATURE("oil temperature", ChannelUnit.CELSIUS, 20, 150, -30, 200),
    WATER_TEMPERATURE("water temperature", ChannelUnit.CELSIUS, 20, 130, -30, 170),
    WATER_PRESSURE("water pressure", ChannelUnit.BAR, 0, 2, -0.6, 6),
    FUEL_PRESSURE("fuel pressure", ChannelUnit.BAR, 2, 6, -0.6, 16),
    LAMBDA("lambda", ChannelUnit.LAMBDA, 0.65, 1.3, 0.3, 3),
    EXHAUST_1("exhaust temperature 1", ChannelUnit.CELSIUS, 100, 1000, -30, 1300),
    EXHAUST_2("exhaust temperature 2", ChannelUnit.CELSIUS, 100, 1000, -30, 1300),
    EXHAUST_3("exhaust temperature 3", ChannelUnit.CELSIUS, 100, 1000, -30, 1300),
    EXHAUST_4("exhaust temperature 4", ChannelUnit.CELSIUS, 100, 1000, -30, 1300),
    EXHAUST_5("exhaust temperature 5", ChannelUnit.CELSIUS, 100, 1000, -30, 1300),
    EXHAUST_6("exhaust temperature 6", ChannelUnit.CELSIUS, 100, 1000, -30, 1300),
    EXHAUST_7("exhaust temperature 7", ChannelUnit.CELSIUS, 100, 1000, -30, 1300),
    EXHAUST_8("exhaust temperature 8", ChannelUnit.CELSIUS, 100, 1000, -30, 1300),
    GEAR("gear", ChannelUnit.COUNT, 0, 7, -2, 12),
    CRANKCASE_PRESSURE("crankcase pressure", ChannelUnit.KILOPASCAL, -40, 10, -101, 100),
    BATTERY("battery", ChannelUnit.VOLT, 10, 16, 0, 20),
    /** The number of the lap, or a mark at its end. */
    LAP("lap", ChannelUnit.COUNT, 0, 1000, -1, 100_000),
    TORQUE("torque", ChannelUnit.NEWTON_METRE, -100, 1000, -1000, 3000),
    POWER("power", ChannelUnit.KILOWATT, -50, 1000, -500, 3000),
    KNOCK("knock", ChannelUnit.UNSAID),
    /** Distance driven, as the logger counts it. */
    DISTANCE("distance", ChannelUnit.METRE),
    /** Kept and drawn, and nothing is worked out of it. */
    OTHER("other", ChannelUnit.UNSAID);

    private final String code;
    private final ChannelUnit unit;
    private final double plausibleLow;
    private final double plausibleHigh;
    private final double possibleLow;
    private final double possibleHigh;

    ChannelKind(String code, ChannelUnit unit) {
        this(
                code,
                unit,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY);
    }

    ChannelKind(
            String code,
            ChannelUnit unit,
            double plausibleLow,
            double plausibleHigh,
            double possibleLow,
            double possibleHigh) {
        this.code = code;
        this.unit = unit;
        this.plausibleLow = plausibleLow;
        this.plausibleHigh = plausibleHigh;
        this.possibleLow = possibleLow;
        this.possibleHigh = possibleHigh;
    }

    @Override
    public String code() {
        return code;
    }

    /** The unit all figures of this kind are reckoned in. */
    public ChannelUnit unit() {
        return unit;
    }

    public double plausibleLow() {
        return plausibleLow;
    }

    public double plausibleHigh() {
        return plausibleHigh;
    }

    /** Whether figures of this kind are usual in this band; both in its own unit. */
    public boolean plausible(double low, double high) {
        return low >= plausibleLow && high <= plausibleHigh;
    }

    /** Whether a sound sensor can say this at all, in the kind's unit; never of NaN. */
    public boolean possible(double figure) {
        return figure >= possibleLow && figure <= possibleHigh;
    }

    /** The units a channel of this kind may be logged in, its own first. */
    public List<ChannelUnit> units() {
        return Stream.concat(
                        Stream.of(unit),
                        Stream.of(ChannelUnit.values())
                                .filter(other -> other != unit && other.measure() == unit.measure()))
                .toList();
    }

    /** The exhaust of one cylinder, 1 to 8. */
    public static ChannelKind exhaust(int cylinder) {
        return Coded.of(ChannelKind.class, "exhaust temperature " + cylinder);
    }

    /** Whether one file may have several channels of this kind. */
    public boolean oftenMany() {
        return this == OTHER || this == KNOCK;
    }
}
