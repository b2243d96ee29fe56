package witnessmark.trace.result;

import witnessmark.domain.Coded;

/** What can be wrong with a trace, each with the rule by which it is left out. Nothing is repaired in silence. */
public enum DefectKind implements Coded {
    /** No figure where one was due: bridged when the engine ran before and after and the hole is short, else not counted. */
    GAP("gap"),
    /** All channels at nothing at once, or speed gone and back at once: left out, then as a gap. */
    DROPOUT("dropout"),
    /** A single figure far from both its neighbours, or beyond what the sensor can say: left out. */
    SPIKE("spike"),
    /** Rows earlier than those before them, after which time goes on: left out. */
    TIME_BACKWARDS("time backwards"),
    /** Time begins anew and goes on from there: the trace is parted. */
    RESTART("restart"),
    /** A second row of the same time: left out. */
    DUPLICATE("duplicated sample"),
    /** NaN, infinite or another word for no figure: left out. */
    NOT_A_NUMBER("not a number"),
    /** Text where a figure belongs: left out. */
    TEXT("text in numbers"),
    /** The headings again: left out. */
    REPEATED_HEADING("repeated heading"),
    /** A row of units among the figures or after them: left out. */
    UNITS_ROW("units row"),
    /** A row of which no time can be read: left out. */
    UNREADABLE_ROW("unreadable row"),
    /** A row with fewer cells than columns: the cells it has count. */
    SHORT_ROW("short row"),
    /** A row with more cells than columns: those over are left out. */
    LONG_ROW("long row"),
    /** The last row ends half-way: left out. */
    CUT_OFF("cut off"),
    /** Exactly the same figure for long while others moved: its time is not counted as logged. */
    FROZEN("frozen"),
    /** A sensor that says something with the engine at rest: told, not corrected. */
    OFFSET("offset at rest"),
    /** Speeds before the engine ran: left out. */
    CRANKING("cranking noise"),
    /** Pressure at exactly nothing and back at once: the sensor, not the engine; left out. */
    SENSOR_DROP("sensor drop"),
    /** A temperature that jumped faster than it can change: left out. */
    SENSOR_JUMP("sensor jump");

    private final String code;

    DefectKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
