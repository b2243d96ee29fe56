package witnessmark.sample;

import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.logbook.Desk;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.HeldFile;
import witnessmark.logbook.tracing.TraceAnswers;
import witnessmark.logbook.tracing.TraceProposal;
import witnessmark.trace.LoggerFiles;

/** Logger's files of the invented season brought into its logbook. */
public final class SampleTraces {
    private SampleTraces() {}

    /** Race 1 of 3 May, car 41, with its mechanical over-rev. */
    public static Id<Trace> race(Desk desk) {
        return bringIn(desk, "2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev(), true);
    }

    /** Run 3 of 21 March, car 57, with its two dropouts of the oil pressure sensor. */
    public static Id<Trace> test(Desk desk) {
        return bringIn(desk, "2026-03-21_57_run3.csv", LoggerFiles.falseDips(), true);
    }

    /**
     * A file for the run it is likeliest of.
     *
     * @param keep whether its samples are kept
     */
    public static Id<Trace> bringIn(Desk desk, String name, String text, boolean keep) {
        BringInTrace bringIn = new BringInTrace(desk, SampleBooks.ids());
        Entry<Run> any = desk.view().facts().of(Run.class).all().get(0);
        BroughtTrace trace = bringIn.read(
                        new HeldFile(name, text),
                        TraceAnswers.none(),
                        bringIn.settings(any.fact().engine()),
                        keep,
                        bytes -> true)
                .orThrow();
        Entry<Run> run = bringIn.runs(trace, 0).get(0);
        TraceProposal proposal = bringIn.propose(trace, 0, run);
        bringIn.save(proposal, proposal.taken(), "", "trace brought in").orThrow();
        return desk.view()
                .facts()
                .of(Trace.class)
                .inForce()
                .filter(entry -> entry.fact().name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }
}
