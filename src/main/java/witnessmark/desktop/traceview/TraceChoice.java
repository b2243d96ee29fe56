package witnessmark.desktop.traceview;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Id;
import witnessmark.domain.Trace;

/** A trace to be chosen, or none. */
record TraceChoice(@Nullable Id<Trace> id, String words) {
    @Override
    public String toString() {
        return words;
    }
}
