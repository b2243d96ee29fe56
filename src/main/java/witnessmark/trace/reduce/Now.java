package witnessmark.trace.reduce;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.Layout;

/** The newest figure of each kind of channel, and how long it holds. */
final class Now {
    private static final int STEPS = 3;

    private static final class Newest {
        private final int column;
        private final long step;
        private final long holds;
        private final String heading;
        private double newest = Double.NaN;
        private boolean fresh;
        private boolean usable;
        private double kept = Double.NaN;
        private long keptAt;

        Newest(Layout layout, int column, long holds) {
            this.column = column;
            this.step = layout.steps().get(column);
            this.holds = Math.max(holds, STEPS * step);
            this.heading = layout.columns().get(column).heading();
        }
    }

    private final Map<ChannelKind, Newest> kinds = new EnumMap<>(ChannelKind.class);
    private long micros;

    Now(Layout layout, long holds) {
        for (ChannelKind kind : ChannelKind.values()) {
            int column = kind.oftenMany() ? -1 : layout.column(kind);
            if (column >= 0) {
                kinds.put(kind, new Newest(layout, column, holds));
            }
        }
    }

    void take(long at, double[] values) {
        micros = at;
        for (Newest each : kinds.values()) {
            double value = values[each.column];
            each.fresh = !Double.isNaN(value);
            each.usable = false;
            each.newest = value;
        }
    }

    Set<ChannelKind> kinds() {
        return kinds.keySet();
    }

    boolean has(ChannelKind kind) {
        return kinds.containsKey(kind);
    }

    boolean isFresh(ChannelKind kind) {
        Newest found = kinds.get(kind);
        return found != null && found.fresh;
    }

    /** Whether it has a figure in this row that can be. */
    boolean usable(ChannelKind kind) {
        Newest found = kinds.get(kind);
        return found != null && found.usable;
    }

    /** The figure of this row. */
    double newest(ChannelKind kind) {
        Newest found = kinds.get(kind);
        return found == null ? Double.NaN : found.newest;
    }

    /** The figure of this row can be, and holds. */
    void keep(ChannelKind kind) {
        Newest found = kinds.get(kind);
        if (found != null) {
            found.usable = true;
            found.kept = found.newest;
            found.keptAt = micros;
        }
    }

    /** The last figure that can be, as long as it holds; else NaN. */
    double held(ChannelKind kind) {
        Newest found = kinds.get(kind);
        return found == null || micros - found.keptAt > found.holds ? Double.NaN : found.kept;
    }

    long step(ChannelKind kind) {
        Newest found = kinds.get(kind);
        return found == null ? 0 : found.step;
    }

    String heading(ChannelKind kind) {
        Newest found = kinds.get(kind);
        return found == null ? "" : found.heading;
    }
}
