package witnessmark.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a life is counted in. A run feeds most of these with a whole number of the counter's unit; a run that does not
 * say is <em>not known</em> for that counter, never zero.
 */
public enum Counter {
    /** Time with the engine turning, milliseconds. */
    RUNNING("running", Unit.MILLISECOND),
    /** Time above the team's loaded speed, milliseconds. */
    LOADED("loaded", Unit.MILLISECOND),
    /** Time above the team's high speed, milliseconds. */
    HIGH_SPEED("high speed", Unit.MILLISECOND),
    /** Distance driven, metres. */
    DISTANCE("distance", Unit.METRE),
    LAPS("laps", Unit.COUNT),
    RACE_STARTS("race starts", Unit.COUNT),
    ENGINE_STARTS("engine starts", Unit.COUNT),
    HEAT_CYCLES("heat cycles", Unit.COUNT),
    /** Full-load sweeps on the dyno. */
    PULLS("pulls", Unit.COUNT),
    /** Excursions above the over-rev speed of the engine design. */
    OVER_REVS("over-revs", Unit.COUNT),

    /** How old it is by the place's local days, whatever ran. A life is in days, a limit in whole months. */
    AGE("months", Unit.DAY),
    /** How often it was fitted and taken off again. */
    USES("uses", Unit.COUNT),
    /** How often it was slackened and tightened again. */
    TORQUE_CYCLES("torque cycles", Unit.COUNT);

    private static final List<Counter> FED_BY_RUNS =
            Arrays.stream(values()).filter(Counter::isFedByRuns).toList();

    /** The unit a counter's whole numbers are in. */
    public enum Unit {
        MILLISECOND,
        METRE,
        COUNT,
        DAY
    }

    private final String code;
    private final Unit unit;

    Counter(String code, Unit unit) {
        this.code = code;
        this.unit = unit;
    }

    /** The counter with this code; empty when there is none. */
    public static Optional<Counter> find(String code) {
        return Arrays.stream(values())
                .filter(counter -> counter.code.equals(code))
                .findFirst();
    }

    /** The word this counter is stored and exchanged under. */
    public String code() {
        return code;
    }

    public Unit unit() {
        return unit;
    }

    /** Whether running moves it; the others move by the calendar and by fitting. */
    public boolean isFedByRuns() {
        return this != AGE && this != USES && this != TORQUE_CYCLES;
    }

    /** Those that runs feed, in order. */
    public static List<Counter> fedByRuns() {
        return FED_BY_RUNS;
    }
}
