package witnessmark.desktop.traces;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.swing.JRootPane;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.runsheet.RunContext;
import witnessmark.desktop.runsheet.RunSheetPlace;
import witnessmark.desktop.runsheet.UndoActions;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.exchange.DiskLoggerFiles;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.WatchedFolder;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The page in the window it stands in, over a logbook of its own. Event thread only. */
final class TraceWindow implements AutoCloseable {
    final Desk book;
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new AssertionError("an answer was not taken", failure);
    });
    final MemorySettings settings = new MemorySettings();
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final RunSheetPlace runSheet;
    final TraceWatch watch;
    final TracePage page;
    final ShellPane pane;
    private final Path files;

    @Nullable
    Path chosen;

    @Nullable
    Path chosenFolder;

    TraceWindow(Path folder, Look look, Texts texts) throws IOException {
        book = new SampleBooks(folder.resolve("books")).untraced();
        files = Files.createDirectories(folder.resolve("files"));
        Measures measures = new Measures(texts, Units.METRIC);
        RunContext runs = new RunContext(book, SampleBooks.ids(), window, tasks, texts, measures, DayOrder.DAY_FIRST);
        UndoActions undo = new UndoActions(runs);
        runSheet = new RunSheetPlace(runs, undo);
        BringInTrace bringIn = new BringInTrace(book, SampleBooks.ids());
        watch = new TraceWatch(texts, measures, tasks, new WatchedFolder(book, settings, new DiskLoggerFiles()));
        page = new TracePage(new TracesContext(
                book,
                bringIn,
                new DiskLoggerFiles(),
                window,
                new SheetTools(texts, tasks, settings),
                measures,
                watch,
                () -> Optional.ofNullable(chosen),
                () -> Optional.ofNullable(chosenFolder),
                new Asked(bringIn, undo)));
        runSheet.onTrace(page::openFor);
        watch.onChange(() -> runSheet.waits(watch.said(), watch.waiting().size(), page::openWaiting));
        List<witnessmark.desktop.shell.Command> commands = new ArrayList<>(undo.commands());
        commands.addAll(TraceCommands.of(texts, page, runSheet::runInView));
        pane = new ShellPane(
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("test", List.of()), () -> {}),
                List.of(runSheet),
                commands,
                List.of());
        pane.logbook("Marrowgate Racing");
        pane.go(Visit.to(PlaceId.RUN_SHEET));
        tasks.awaitIdle();
    }

    private final class Asked implements TracesContext.Asked {
        private final BringInTrace bringIn;
        private final UndoActions undo;

        Asked(BringInTrace bringIn, UndoActions undo) {
            this.bringIn = bringIn;
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
            return runSheet.logWith(
                    new WithTrace(bringIn, trace, part, note, FieldUnits.metric(DayOrder.DAY_FIRST), page::logged));
        }

        @Override
        public void undo(UUID change) {
            undo.undo(change);
        }
    }

    Path file(String name, String text) throws IOException {
        return Files.writeString(files.resolve(name), text);
    }

    /** Opens a file and waits until it is read. */
    void open(String name, String text) throws IOException {
        page.open(file(name, text));
        tasks.awaitIdle();
    }

    Run run(Id<Run> id) {
        return book.view().facts().of(Run.class).get(id);
    }

    List<Entry<Trace>> traces() {
        return book.view().facts().of(Trace.class).inForce().toList();
    }

    JRootPane laidOut(int width, int height) {
        tasks.awaitIdle();
        JRootPane root = Stage.window(pane, pane::menuBar, width, height);
        return Stage.lay(root, width, height);
    }

    @Override
    public void close() {
        watch.close();
        tasks.awaitIdle();
        tasks.close();
        book.logbook().close();
    }
}
