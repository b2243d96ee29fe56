package witnessmark.trace.result;

import witnessmark.domain.Coded;

/**
 * A figure by which a trace is reduced, with what it is when nobody says otherwise. A setting that is {@link #none} must
 * be said, or what rests on it is not worked out. Values: common practice, no source, unless a comment says another.
 */
public enum TraceSetting implements Coded {
    /** The engine runs from this speed on, rpm. */
    RUNNING_FROM("running from", 500, 0, 15_000),
    /** It runs under load from this speed on, rpm. */
    LOADED_FROM("loaded from", 3000, 0, 15_000),
    /** High speed begins here, rpm. */
    HIGH_SPEED_FROM("high speed from", Double.NaN, 0, 15_000),
    /** Above this speed it is an over-rev, rpm. */
    OVER_REV_ABOVE("over-rev above", Double.NaN, 0, 15_000),
    /** An over-rev goes on until speed is this much lower, rpm. */
    OVER_REV_HYSTERESIS("over-rev hysteresis", 100, 0, 5000),
    /** So many samples above, at least. */
    OVER_REV_SAMPLES("over-rev samples", 2, 1, 1000),
    /** For so long together, at least, s. */
    OVER_REV_SHORTEST("over-rev shortest", 0.06, 0, 60),
    /** Two over-revs nearer to each other than this are one, s. */
    OVER_REV_APART("over-revs apart", 0.5, 0, 60),
    /** Throttle up to this is shut, %. */
    THROTTLE_SHUT("throttle shut", 10, 0, 100),
    /** A hole is a time of more than so many usual steps without a figure. */
    GAP_STEPS("gap steps", 2.5, 1, 1000),
    /** A hole up to this long is bridged if the engine ran before and after it, s. */
    GAP_BRIDGED("gap bridged", 5, 0, 60),
    /** From a trace that begins with the engine at rest, so long speeds may be noise of the starter, s. */
    CRANKING("cranking", 5, 0, 60),
    /** A trace begins with the engine at rest below this speed, rpm. */
    AT_REST_BELOW("at rest below", 300, 0, 3000),
    /** A single figure of speed this far from both neighbours may be a spike, rpm. */
    SPIKE_RISE("spike rise", 1500, 0, 15_000),
    /** If it got there and back faster than this, rpm/s. */
    SPIKE_RATE("spike rate", 40_000, 0, 10_000_000),
    /** Oil pressure is to be this much for each 1000 rpm, bar. */
    OIL_FLOOR("oil floor", 0.5, 0, 5),
    /** Above this speed, rpm. */
    OIL_FLOOR_ABOVE("oil floor above", 4000, 0, 15_000),
    /** Less than that for longer than this is a dip, s. */
    OIL_DIP_SHORTEST("oil dip shortest", 0.2, 0, 60),
    /** Pressure at exactly nothing and back at once within this is the sensor, s. */
    SENSOR_DROP("sensor drop", 2, 0, 60),
    /** From this pressure and back to it at once, bar. */
    SENSOR_DROP_FROM("sensor drop from", 0.5, 0, 16),
    /** A pressure sensor that says more than this with the engine at rest is off, bar. */
    OFFSET("offset", 0.1, 0, 5),
    /** Water this hot is too hot, °C. */
    WATER_LIMIT("water limit", Double.NaN, 0, 200),
    /** Oil this hot is too hot, °C. */
    OIL_LIMIT("oil limit", Double.NaN, 0, 300),
    /** A heat cycle can begin once water was below this, °C. */
    HEAT_ARMED_BELOW("heat armed below", 40, -30, 200),
    /** It counts once water was above this, °C … */
    HEAT_COUNTED_ABOVE("heat counted above", 70, -30, 200),
    /** … for so long, s. */
    HEAT_COUNTED_FOR("heat counted for", 60, 0, 3600),
    /** A temperature changes no faster than this, °C/s. */
    JUMP("jump", 5, 0.1, 1000),
    /** Steps up to this are how finely a sensor reads, °C. */
    JUMP_LEAST("jump least", 2, 0, 50),
    /** Water that falls by so much, to below what counts as hot, under load, has not cooled: the sensor lost it, °C. */
    IMPLAUSIBLE_FALL("implausible fall", 20, 1, 200),
    /** Ranges of temperature smaller than this are none, °C. */
    THERMAL_RANGE("thermal range", 2, 0.1, 100),
    /** Exactly the same figure for this long, while others moved, is frozen, s. */
    FROZEN("frozen", 5, 0.5, 600),
    /** A pull rises by so much at least, rpm … */
    PULL_RISE("pull rise", 2000, 100, 15_000),
    /** … for so long at least, s … */
    PULL_SHORTEST("pull shortest", 3, 0.1, 600),
    /** … with the throttle this far open where it is logged, %. */
    PULL_THROTTLE("pull throttle", 90, 0, 100);

    private final String code;
    private final double usual;
    private final double least;
    private final double most;

    TraceSetting(String code, double usual, double least, double most) {
        this.code = code;
        this.usual = usual;
        this.least = least;
        this.most = most;
    }

    @Override
    public String code() {
        return code;
    }

    /** What it is when nobody says otherwise; NaN if it must be said. */
    public double usual() {
        return usual;
    }

    /** Whether it has no usual value. */
    public boolean none() {
        return Double.isNaN(usual);
    }

    public double least() {
        return least;
    }

    public double most() {
        return most;
    }
}
