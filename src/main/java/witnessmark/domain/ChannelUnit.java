package witnessmark.domain;

/**
 * The unit a channel of a logger is in. Units of one {@link Measure} turn into each other:
 * {@code in the first unit of the measure = (figure − zero) × scale}.
 */
public enum ChannelUnit implements Coded {
    RPM("rpm", Measure.ENGINE_SPEED, 0, 1),
    /** A tenth of the speed is written, so that it fits a short number. */
    TEN_RPM("10 rpm", Measure.ENGINE_SPEED, 0, 10),
    THOUSAND_RPM("1000 rpm", Measure.ENGINE_SPEED, 0, 1000),
    REV_PER_SECOND("1/s", Measure.ENGINE_SPEED, 0, 60),

    PERCENT("%", Measure.SHARE, 0, 1),
    /** 0 to 1. */
    SHARE_OF_ONE("of 1", Measure.SHARE, 0, 100),

    KILOMETRE_PER_HOUR("km/h", Measure.SPEED, 0, 1),
    MILE_PER_HOUR("mph", Measure.SPEED, 0, 1.609344),
    METRE_PER_SECOND("m/s", Measure.SPEED, 0, 3.6),
    KNOT("kn", Measure.SPEED, 0, 1.852),

    /** Standard gravity, 9.80665 m/s². */
    G("g", Measure.ACCELERATION, 0, 1),
    METRE_PER_SECOND_SQUARED("m/s2", Measure.ACCELERATION, 0, 1 / 9.80665),

    BAR("bar", Measure.PRESSURE, 0, 1),
    /** Pound-force per square inch, 6894.757293168361 Pa. */
    PSI("psi", Measure.PRESSURE, 0, 0.0689475729316836),
    KILOPASCAL("kPa", Measure.PRESSURE, 0, 0.01),
    MEGAPASCAL("MPa", Measure.PRESSURE, 0, 10),
    PASCAL("Pa", Measure.PRESSURE, 0, 1e-5),
    MILLIBAR("mbar", Measure.PRESSURE, 0, 0.001),

    CELSIUS("°C", Measure.TEMPERATURE, 0, 1),
    FAHRENHEIT("°F", Measure.TEMPERATURE, 32, 5.0 / 9),
    KELVIN("K", Measure.TEMPERATURE, 273.15, 1),

    LAMBDA("lambda", Measure.MIXTURE, 0, 1),

    COUNT("count", Measure.COUNT, 0, 1),

    VOLT("V", Measure.VOLTAGE, 0, 1),
    MILLIVOLT("mV", Measure.VOLTAGE, 0, 0.001),

    NEWTON_METRE("Nm", Measure.TORQUE, 0, 1),
    POUND_FOOT("lbf ft", Measure.TORQUE, 0, 1.3558179483314),

    KILOWATT("kW", Measure.POWER, 0, 1),
    /** Mechanical horsepower, 745.6998715822702 W. */
    HORSEPOWER("hp", Measure.POWER, 0, 0.7456998715822702),
    /** Metric horsepower, 735.49875 W. */
    METRIC_HORSEPOWER("PS", Measure.POWER, 0, 0.73549875),

    METRE("m", Measure.DISTANCE, 0, 1),
    KILOMETRE("km", Measure.DISTANCE, 0, 1000),
    MILE("mile", Measure.DISTANCE, 0, 1609.344),

    /** Nobody said; the figure is taken as it is. */
    UNSAID("", Measure.UNSAID, 0, 1);

    /** What a unit measures. */
    public enum Measure {
        ENGINE_SPEED,
        SHARE,
        SPEED,
        ACCELERATION,
        PRESSURE,
        TEMPERATURE,
        MIXTURE,
        COUNT,
        VOLTAGE,
        TORQUE,
        POWER,
        DISTANCE,
        UNSAID
    }

    private final String code;
    private final Measure measure;
    private final double zero;
    private final double scale;

    ChannelUnit(String code, Measure measure, double zero, double scale) {
        this.code = code;
        this.measure = measure;
        this.zero = zero;
        this.scale = scale;
    }

    @Override
    public String code() {
        return code;
    }

    public Measure measure() {
        return measure;
    }

    /**
     * A figure in this unit, in another of the same measure; exactly itself in its own.
     *
     * @throws IllegalArgumentException if the other unit measures something else
     */
    public double to(ChannelUnit other, double figure) {
        if (other == this) {
            return figure;
        }
        if (other.measure != measure) {
            throw new IllegalArgumentException(code + " is no " + other.code);
        }
        return (figure - zero) * scale / other.scale + other.zero;
    }
}
