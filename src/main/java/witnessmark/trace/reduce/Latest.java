package witnessmark.trace.reduce;

import witnessmark.domain.ChannelKind;
import witnessmark.trace.Layout;

/** The newest figure of a channel, and how long it holds. */
final class Latest {
    /** A figure holds for this long, or for three steps of its channel, microseconds. */
    private static final long HOLDS = 1_000_000;

    private static final int STEPS = 3;

    private final ChannelKind kind;
    private final int column;
    private final long step;
    private final long holds;
    private final String heading;
    private double figure = Double.NaN;
    private boolean fresh;
    private boolean usable;
    private boolean logged;
    private double kept = Double.NaN;
    private long keptAt;

    Latest(Layout layout, ChannelKind kind) {
        this.kind = kind;
        this.column = layout.column(kind);
        this.step = column < 0 ? 0 : layout.steps().get(column);
        this.holds = Math.max(HOLDS, STEPS * step);
        this.heading = column < 0 ? "" : layout.columns().get(column).heading();
    }

    /**
     * Takes the channel's figure of a row. To be asked only where the trace has the channel.
     *
     * @return whether there is one that no sound sensor says
     */
    boolean take(long micros, double[] values) {
        figure = values[column];
        fresh = !Double.isNaN(figure);
        usable = kind.possible(figure);
        if (usable) {
            kept = figure;
            keptAt = micros;
            logged = true;
        }
        return fresh && !usable;
    }

    boolean there() {
        return column >= 0;
    }

    /** Whether the row has a figure of it, possible or not. */
    boolean fresh() {
        return fresh;
    }

    /** Whether the row has a figure of it that can be. */
    boolean usable() {
        return usable;
    }

    /** Whether there was ever a figure that can be. */
    boolean logged() {
        return logged;
    }

    /** The figure of this row. */
    double figure() {
        return figure;
    }

    /** The last figure that can be, as long as it holds; else NaN. */
    double held(long micros) {
        return micros - keptAt > holds ? Double.NaN : kept;
    }

    ChannelKind kind() {
        return kind;
    }

    long step() {
        return step;
    }

    String heading() {
        return heading;
    }
}
