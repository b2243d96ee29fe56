package witnessmark.desktop.runsheet;

import java.util.List;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import witnessmark.desktop.find.RecordsFindable;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The run sheet in the window's shell, with another place to come from. Event thread only. */
final class RunSheetStage implements AutoCloseable {
    final Desk book;
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new AssertionError("an answer was not taken", failure);
    });
    final RunSheetPlace place;
    final ShellPane pane;
    final UndoActions undo;
    private final Texts texts;

    RunSheetStage(Desk book) {
        this(book, Theme.LIGHT, 1.0f);
    }

    RunSheetStage(Desk book, Theme theme, float zoom) {
        this(book, Looks.look(theme, zoom), Texts.in(Locale.UK));
    }

    final Elsewhere elsewhere = new Elsewhere();

    RunSheetStage(Desk book, Texts texts) {
        this(book, Looks.light(), texts);
    }

    private RunSheetStage(Desk book, Look look, Texts texts) {
        this.book = book;
        this.texts = texts;
        witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
        Measures measures = new Measures(texts, Units.METRIC);
        RunContext context = new RunContext(book, SampleBook.ids(), window, tasks, texts, measures, DayOrder.DAY_FIRST);
        undo = new UndoActions(context);
        place = new RunSheetPlace(context, undo);
        pane = new ShellPane(
                new ShellContext(
                        texts, tasks, new MemorySettings(), look, window, new AboutFacts("test", List.of()), () -> {}),
                List.of(elsewhere, place),
                undo.commands(),
                RecordsFindable.all(
                        texts,
                        measures,
                        window,
                        () -> book.view().facts(),
                        book::day,
                        DayOrder.DAY_FIRST,
                        new RecordsFindable.Opened(record -> {}, record -> {}, record -> {})));
        pane.logbook(texts.get("shell.program"));
    }

    /** Goes to the run sheet and waits until it is filled. */
    RunSheetStage open() {
        pane.go(Visit.to(PlaceId.RUN_SHEET));
        tasks.awaitIdle();
        return this;
    }

    /** Goes to a written run and waits until all about it is read. */
    RunSheetStage open(Id<Run> run) {
        pane.go(Visit.to(PlaceId.RUN_SHEET, run.text()));
        tasks.awaitIdle();
        return this;
    }

    /** The run of an engine that has this name, on a day. */
    Id<Run> run(String engine, String day, String name) {
        Id<Engine> of =
                book.view().facts().of(Engine.class).named(engine).orElseThrow().id();
        return book.view().facts().of(Run.class).all().stream()
                .filter(run -> run.fact().engine().equals(of)
                        && run.fact().name().equals(name)
                        && run.fact().start().day().toString().equals(day))
                .findFirst()
                .orElseThrow()
                .id();
    }

    /** Corrects a field of the written run on the sheet and leaves it. */
    void correct(RunField field, String text) {
        put(field, text);
        tasks.awaitIdle();
    }

    RunSheetModel model() {
        return place.model();
    }

    /** Types into a field and leaves it. */
    void put(RunField field, String text) {
        onTop().type(field, text);
        onTop().leave(field);
    }

    /** The model of what is seen. */
    private RunSheetModel onTop() {
        return place.isWritten() ? place.writtenModel() : model();
    }

    /** Picks the choice that reads so. */
    void pick(RunField field, String shown) {
        RunWords words = new RunWords(texts, new Measures(texts, Units.METRIC));
        onTop().choices(field).stream()
                .filter(choice -> words.choice(choice).equals(shown))
                .findFirst()
                .ifPresentOrElse(choice -> put(field, choice.key()), () -> {
                    throw new AssertionError("nobody can pick " + shown);
                });
    }

    /** The window's inside laid out at a size, in pixels of the screen. */
    JRootPane laidOut(int width, int height) {
        tasks.awaitIdle();
        JRootPane root = Stage.window(pane, pane::menuBar, width, height);
        place.panel().fit();
        if (place.isWritten()) {
            place.writtenPanel().fit();
        }
        return Stage.lay(root, width, height);
    }

    @Override
    public void close() {
        tasks.close();
    }

    /** Somewhere else in the window. */
    static final class Elsewhere implements Place {
        private final JButton button = new JButton("elsewhere");
        private final JPanel page = new JPanel();
        int recounted;

        Elsewhere() {
            page.add(button);
        }

        @Override
        public PlaceId id() {
            return PlaceId.BEFORE_WE_GO;
        }

        @Override
        public JComponent component() {
            return page;
        }

        @Override
        public JComponent firstFocus() {
            return button;
        }

        @Override
        public void refresh() {
            page.repaint();
        }

        @Override
        public void recount() {
            recounted++;
        }
    }
}
