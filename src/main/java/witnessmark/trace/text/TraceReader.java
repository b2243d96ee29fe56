package witnessmark.trace.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;
import witnessmark.trace.DefectLog;
import witnessmark.trace.SampleSink;
import witnessmark.trace.Watch;
import witnessmark.trace.packed.PackedProblem;
import witnessmark.trace.packed.UpToTheCut;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceRead;

/** Reads all of a trace in one pass and hands on its samples. */
public final class TraceReader {
    private TraceReader() {}

    /**
     * @param in from the first byte of the text; not closed
     * @param form as the file is written; its time base must be known
     * @param sink is told that it ended only when all was read
     * @return what was read, except for what a person has to know of it: that it ends too early, or is not what was packed; or
     *     why not, also when the sink cannot write; then nothing of what it holds may be kept
     * @throws IllegalArgumentException if the form does not say the time of a sample
     */
    public static Outcome<TraceRead> read(InputStream in, TraceForm form, SampleSink sink, Watch watch) {
        if (!form.time().known()) {
            throw new IllegalArgumentException("samples a second are not known");
        }
        UpToTheCut text = new UpToTheCut(in);
        PlainBytes.Counted counted = new PlainBytes.Counted(text, watch);
        DefectLog defects = new DefectLog();
        Sequence sequence = new Sequence(form.columns(), sink, defects);
        try {
            RowScanner scanner = new RowScanner(
                    PlainBytes.of(counted, form.coding()),
                    form.delimiter(),
                    form.decimal(),
                    form.thousands(),
                    form.columns().size());
            scanner.skip(form.before());
            Rows rows = new Rows(scanner, form, sequence, defects);
            while (scanner.next()) {
                rows.take(text.isCut());
            }
            rows.end(text);
            sequence.end();
            if (sequence.rows() == 0) {
                return Outcome.didNot(text.flaw().orElse(Problem.of(ProblemKind.TRACE_WITHOUT_FIGURES)));
            }
            TraceRead read = new TraceRead(
                    counted.bytes(),
                    sequence.rows(),
                    sequence.parts(),
                    sequence.lasted(),
                    rows.late(),
                    defects.found());
            return Outcome.of(read, toBeKnown(read));
        } catch (PlainBytes.Stopped e) {
            return Outcome.didNot(Problem.of(ProblemKind.TRACE_STOPPED, counted.bytes()));
        } catch (Sequence.TooManyParts e) {
            return Outcome.didNot(Problem.of(ProblemKind.TRACE_TIME_JUMPS, sequence.parts()));
        } catch (PackedProblem e) {
            return Outcome.didNot(e.problem());
        } catch (UncheckedIOException e) {
            return Outcome.didNot(Problem.of(ProblemKind.TRACE_NOT_KEPT, said(e)));
        } catch (IOException e) {
            return Outcome.didNot(Problem.of(ProblemKind.TRACE_BROKE_OFF, counted.bytes(), said(e)));
        }
    }

    private static List<Problem> toBeKnown(TraceRead read) {
        List<Problem> known = new ArrayList<>();
        if (read.defects().times(DefectKind.CUT_OFF) > 0) {
            known.add(Problem.of(
                    ProblemKind.TRACE_CUT_SHORT,
                    read.rows(),
                    new RunningTime(
                            read.lasted().stream().mapToLong(Long::longValue).sum() / 1_000)));
        }
        if (read.defects().times(DefectKind.CHECKSUM) > 0) {
            known.add(Problem.of(ProblemKind.TRACE_SUSPECT));
        }
        return known;
    }

    private static String said(Exception e) {
        Throwable cause = e instanceof UncheckedIOException && e.getCause() != null ? e.getCause() : e;
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }
}
