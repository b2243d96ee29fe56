package witnessmark.desktop.traceview;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.DrawnTraceRows;
import witnessmark.chart.TraceRows;
import witnessmark.desktop.task.Latest;
import witnessmark.logbook.tracing.KeptTrace;
import witnessmark.wording.Texts;

/** Reads the figures of what is in sight off the event thread, and hands its pages on to be printed. */
final class PrintTrace {
    private final TraceViewContext context;
    private final Texts texts;
    private final ReadTrace reader;
    private final TraceModel model;
    private final Latest reading;
    private final Consumer<Throwable> failed;

    PrintTrace(TraceViewContext context, ReadTrace reader, TraceModel model, Consumer<Throwable> failed) {
        this.context = context;
        this.texts = context.texts();
        this.reader = reader;
        this.model = model;
        this.reading = new Latest(context.tasks());
        this.failed = failed;
    }

    /** Says that nothing is shown where something of it is missing. */
    void print(@Nullable Shown shown, @Nullable TraceRows rows, @Nullable DrawnTraceRows drawn) {
        KeptTrace kept = shown == null ? null : shown.kept();
        if (shown == null || rows == null || drawn == null || kept == null) {
            context.window().say(texts.get("tracesheet.first"));
            return;
        }
        double from = drawn.seen().from();
        double until = drawn.seen().to();
        reading.run(
                texts.get("traceview.reading"),
                () -> new TraceOnPaper(texts, context.measures(), model)
                        .of(
                                shown,
                                rows,
                                from,
                                until,
                                model.figures(reader.between(kept, Math.round(from * 1e6), Math.round(until * 1e6))),
                                context.book()),
                context.print(),
                failed);
    }
}
