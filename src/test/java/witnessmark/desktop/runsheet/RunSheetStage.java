package witnessmark.desktop.runsheet;

import java.util.List;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JRootPane;
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
    private final Texts texts;

    RunSheetStage(Desk book) {
        this(book, Theme.LIGHT, 1.0f);
    }

    RunSheetStage(Desk book, Theme theme, float zoom) {
        this(book, Looks.look(theme, zoom), Texts.in(Locale.UK));
    }

    RunSheetStage(Desk book, Texts texts) {
        this(book, Looks.light(), texts);
    }

    private RunSheetStage(Desk book, Look look, Texts texts) {
        this.book = book;
        this.texts = texts;
        witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
        RunContext context = new RunContext(
                book, SampleBook.ids(), window, tasks, texts, new Measures(texts, Units.METRIC), DayOrder.DAY_FIRST);
        UndoActions undo = new UndoActions(context);
        place = new RunSheetPlace(context, undo);
        pane = new ShellPane(
                new ShellContext(
                        texts, tasks, new MemorySettings(), look, window, new AboutFacts("test", List.of()), () -> {}),
                List.of(new Elsewhere(), place),
                undo.commands(),
                List.of());
        pane.logbook(texts.get("shell.program"));
    }

    /** Goes to the run sheet and waits until it is filled. */
    RunSheetStage open() {
        pane.go(Visit.to(PlaceId.RUN_SHEET));
        tasks.awaitIdle();
        return this;
    }

    RunSheetModel model() {
        return place.model();
    }

    /** Types into a field and leaves it. */
    void put(RunField field, String text) {
        model().type(field, text);
        model().leave(field);
    }

    /** Picks the choice that reads so. */
    void pick(RunField field, String shown) {
        RunWords words = new RunWords(texts, new Measures(texts, Units.METRIC));
        model().choices(field).stream()
                .filter(choice -> words.choice(choice).equals(shown))
                .findFirst()
                .ifPresentOrElse(choice -> put(field, choice.key()), () -> {
                    throw new AssertionError("nobody can pick " + shown);
                });
    }

    /** The window's inside laid out at a size, in pixels of the screen. */
    JRootPane laidOut(int width, int height) {
        tasks.awaitIdle();
        JRootPane root = Stage.window(pane, pane.menuBar(), width, height);
        place.panel().fit();
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
    }
}
