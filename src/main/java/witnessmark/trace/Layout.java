package witnessmark.trace;

import java.util.List;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.result.ColumnForm;

/**
 * The columns of samples.
 *
 * @param columns all columns of the file
 * @param steps the usual time from one figure of a column to its next, microseconds; 0 for a column of time or one that
 *     has no figures at first
 */
public record Layout(List<ColumnForm> columns, List<Long> steps) {
    public Layout {
        columns = List.copyOf(columns);
        steps = List.copyOf(steps);
    }

    /** The first column of this kind that is no column of time, or −1. */
    public int column(ChannelKind kind) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).kind() == kind) {
                return i;
            }
        }
        return -1;
    }

    /** The usual time from one row to the next, microseconds; 0 for a single row. */
    public long step() {
        return steps.stream().filter(step -> step > 0).min(Long::compare).orElse(0L);
    }
}
