package witnessmark.trace.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.TraceMarkKind;

/** What can be wrong with a trace, each with the rule by which it is left out. Nothing is repaired in silence. */
public enum DefectKind implements Coded {
    /** No figure where one was due: bridged when the engine ran before and after and the hole is short, else not counted. */
    GAP(TraceMarkKind.GAP),
    /** All channels at nothing at once, or speed gone and back at once: left out, then as a gap. */
    DROPOUT(TraceMarkKind.DROPOUT),
    /** A single figure far from both its neighbours, or beyond what the sensor can say: left out. */
    SPIKE(TraceMarkKind.SPIKE),
    /** Rows earlier than those before them, after which time goes on: left out. */
    TIME_BACKWARDS(TraceMarkKind.TIME_BACKWARDS),
    /** Time begins anew and goes on from there: the trace is parted. */
    RESTART(TraceMarkKind.RESTART),
    /** A second row of the same time: left out. */
    DUPLICATE(TraceMarkKind.DUPLICATE),
    /** NaN, infinite or another word for no figure: left out. */
    NOT_A_NUMBER(TraceMarkKind.NOT_A_NUMBER),
    /** Text where a figure belongs: left out. */
    TEXT(TraceMarkKind.TEXT),
    /** The headings again: left out. */
    REPEATED_HEADING(TraceMarkKind.REPEATED_HEADING),
    /** A row of units among the figures or after them: left out. */
    UNITS_ROW(TraceMarkKind.UNITS_ROW),
    /** A row of which no time can be read: left out. */
    UNREADABLE_ROW(TraceMarkKind.UNREADABLE_ROW),
    /** A row with fewer cells than columns: the cells it has count. */
    SHORT_ROW(TraceMarkKind.SHORT_ROW),
    /** A row with more cells than columns: those over are left out. */
    LONG_ROW(TraceMarkKind.LONG_ROW),
    /** The file ends too early, half-way through a row or through what is packed: a row that is not whole is left out. */
    CUT_OFF(TraceMarkKind.CUT_OFF),
    /** What was unpacked does not fit its checksum: any of it may be wrong, and nothing is left out. */
    CHECKSUM("wrong checksum"),
    /** Exactly the same figure for long while others moved: its time is not counted as logged. */
    FROZEN(TraceMarkKind.FROZEN),
    /** A sensor that says something with the engine at rest: told, not corrected. */
    OFFSET(TraceMarkKind.OFFSET),
    /** Speeds before the engine ran: left out. */
    CRANKING(TraceMarkKind.CRANKING),
    /** Pressure at exactly nothing and back at once: the sensor, not the engine; left out. */
    SENSOR_DROP(TraceMarkKind.SENSOR_DROP),
    /** A temperature that jumped faster than it can change: left out. */
    SENSOR_JUMP(TraceMarkKind.SENSOR_JUMP);

    private final @Nullable TraceMarkKind mark;
    private final String code;

    DefectKind(TraceMarkKind mark) {
        this.mark = mark;
        this.code = mark.code();
    }

    /** Of the file as a whole, which has no place to be marked. */
    DefectKind(String code) {
        this.mark = null;
        this.code = code;
    }

    /** What it is written down as at its place; null for one that is nowhere. */
    public @Nullable TraceMarkKind mark() {
        return mark;
    }

    @Override
    public String code() {
        return code;
    }
}
