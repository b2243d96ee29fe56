package witnessmark.desktop.traces;

import java.util.Map;
import java.util.function.ObjIntConsumer;
import witnessmark.desktop.runsheet.GoesWith;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.RunToLog;
import witnessmark.logbook.tracing.TraceProposal;
import witnessmark.outcome.Outcome;

/** A run nobody has logged, on the run sheet with what its trace knows; both are written in one change. */
public final class WithTrace implements GoesWith {
    private final BringInTrace bringIn;
    private final BroughtTrace trace;
    private final int part;
    private final String note;
    private final Map<RunField, String> filled;
    private final ObjIntConsumer<BroughtTrace> saved;

    /**
     * @param units of the fields of the sheet
     * @param saved told once both are written
     */
    public WithTrace(
            BringInTrace bringIn,
            BroughtTrace trace,
            int part,
            String note,
            FieldUnits units,
            ObjIntConsumer<BroughtTrace> saved) {
        this.bringIn = bringIn;
        this.trace = trace;
        this.part = part;
        this.note = note;
        this.filled = bringIn.toLog(trace, part).texts(units);
        this.saved = saved;
    }

    @Override
    public String name() {
        return trace.name();
    }

    @Override
    public Map<RunField, String> filled() {
        return filled;
    }

    @Override
    public Outcome<Written> save(Entry<Run> run, Map<RunField, String> fields, String why) {
        TraceProposal proposal = bringIn.propose(trace, part, run);
        return bringIn.save(proposal, RunToLog.taken(proposal, filled, fields), note, why);
    }

    @Override
    public void saved() {
        saved.accept(trace, part);
    }
}
