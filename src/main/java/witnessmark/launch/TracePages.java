package witnessmark.launch;

import java.util.UUID;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.runsheet.RunSheetPlace;
import witnessmark.desktop.runsheet.UndoActions;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.start.Choosing;
import witnessmark.desktop.traces.TracePage;
import witnessmark.desktop.traces.TraceWatch;
import witnessmark.desktop.traces.TracesContext;
import witnessmark.desktop.traces.WithTrace;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.WatchedFolder;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;
import witnessmark.wording.Units;

/** Bringing traces in, in the place of the run sheet. */
final class TracePages {
    private final RunSheetPlace runSheet;
    private final BringInTrace bringIn;
    private final FieldUnits units;
    private final TracePage page;
    private final TraceWatch watch;

    TracePages(
            ShellContext shell,
            Measures measures,
            OpenBook book,
            Outside outside,
            Choosing choosing,
            RunSheetPlace runSheet,
            UndoActions undo,
            DayOrder days) {
        this.runSheet = runSheet;
        this.bringIn = new BringInTrace(book.desk(), outside.ids(), shell.tasks()::beside);
        Units shown = measures.units();
        this.units = new FieldUnits(shown.pressure(), shown.temperature(), shown.volume(), shown.distance(), days);
        this.watch = new TraceWatch(
                shell.texts(),
                measures,
                shell.tasks(),
                new WatchedFolder(book.desk(), shell.settings(), outside.traces()));
        this.page = new TracePage(new TracesContext(
                book.desk(),
                bringIn,
                outside.traces(),
                shell.desk(),
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                watch,
                choosing::traceToRead,
                choosing::tracesFolder,
                new Asked(shell.desk(), undo)));
        runSheet.onTrace(page::openFor);
        watch.onChange(() -> runSheet.waits(watch.said(), watch.waiting().size(), page::openWaiting));
        watch.look();
    }

    /** Looks at no folder any more. */
    void close() {
        watch.close();
    }

    TracePage page() {
        return page;
    }

    /** What the page leads to. */
    private final class Asked implements TracesContext.Asked {
        private final witnessmark.desktop.shell.Desk window;
        private final UndoActions undo;

        Asked(witnessmark.desktop.shell.Desk window, UndoActions undo) {
            this.window = window;
            this.undo = undo;
        }

        @Override
        public void show(Aside shown) {
            runSheet.stepAside(shown);
        }

        @Override
        public void leave() {
            runSheet.dismiss();
        }

        @Override
        public void run(Id<Run> run) {
            window.go(PlaceId.RUN_SHEET, run.text());
        }

        @Override
        public boolean log(BroughtTrace trace, int part, String note) {
            return runSheet.logWith(new WithTrace(bringIn, trace, part, note, units, page::logged));
        }

        @Override
        public void undo(UUID change) {
            undo.undo(change);
        }
    }
}
