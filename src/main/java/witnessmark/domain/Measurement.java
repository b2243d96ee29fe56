package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Temperature;

/**
 * A figure of a build sheet as measured.
 *
 * @param build on the sheet of which build
 * @param kind what was measured, never what is worked out
 * @param number which cylinder or main bearing, counted from 1; null for the engine's one
 * @param spot where there; null when there is one figure for the place
 * @param value in whole parts of the kind's {@link witnessmark.quantity.Dimension}
 * @param typed the figure with its unit as typed
 * @param at when it was measured
 * @param tool with what, or null when not said
 * @param temperature of room and part, or null when not said
 * @param stood how the part stood
 * @param inUse whether it is the one of its place that counts; repeats are kept
 * @param by by whom
 * @param note anything else
 */
public record Measurement(
        Id<Build> build,
        MeasureKind kind,
        @Nullable Integer number,
        @Nullable Spot spot,
        long value,
        String typed,
        Moment at,
        @Nullable Id<Tool> tool,
        @Nullable Temperature temperature,
        HowStood stood,
        boolean inUse,
        String by,
        String note)
        implements Fact {
    public Measurement {
        if (kind.workedOut()) {
            throw new IllegalArgumentException(kind.code() + " is worked out, not measured");
        }
        new MeasurePlace(kind, number, spot);
    }

    /** Where it was measured. */
    public MeasurePlace place() {
        return new MeasurePlace(kind, number, spot);
    }

    @Override
    public Moment happened() {
        return at;
    }
}
