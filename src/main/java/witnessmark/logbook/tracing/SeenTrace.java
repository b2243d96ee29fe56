package witnessmark.logbook.tracing;

import java.util.List;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.domain.SpeedHistogram;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.trace.result.PartWear;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceSettings;

/**
 * A trace of the logbook with what belongs to it.
 *
 * @param trace the entry
 * @param run it is of
 * @param engine that ran
 * @param form how it was read
 * @param settings what it was worked out with
 * @param marks found in it, in the order of time
 * @param speeds time at each speed; nothing where no speed was logged
 * @param wear of each kind of part of which the team wrote an exponent
 */
public record SeenTrace(
        Entry<Trace> trace,
        Entry<Run> run,
        Entry<Engine> engine,
        TraceForm form,
        TraceSettings settings,
        List<TraceMark> marks,
        SpeedHistogram speeds,
        List<PartWear> wear) {
    public SeenTrace {
        marks = List.copyOf(marks);
        wear = List.copyOf(wear);
    }
}
