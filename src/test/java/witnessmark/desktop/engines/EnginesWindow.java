package witnessmark.desktop.engines;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.swing.JRootPane;
import javax.swing.JTable;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.runsheet.RunContext;
import witnessmark.desktop.runsheet.RunSheetPlace;
import witnessmark.desktop.runsheet.UndoActions;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The window on the place Engines, over the sample season. */
final class EnginesWindow implements AutoCloseable {
    final Texts texts;
    final Desk desk;
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final MemorySettings settings;
    private final Look look;
    final EnginesPlace place;
    final ShellPane pane;
    private @Nullable Entry<?> corrected;

    /** @param others further places of the window, to be led to; the run sheet when none is given */
    EnginesWindow(Desk desk, Look look, Texts texts, Place... others) {
        this(desk, look, texts, new MemorySettings(), others);
    }

    private EnginesWindow(Desk desk, Look look, Texts texts, MemorySettings settings, Place... others) {
        this.desk = desk;
        this.look = look;
        this.texts = texts;
        this.settings = settings;
        place = new EnginesPlace(
                texts,
                new Measures(texts, Units.METRIC),
                tasks,
                window,
                () -> desk,
                settings,
                DayOrder.DAY_FIRST,
                this::correct);
        ShellContext context =
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("0.1.0", List.of()), () -> {});
        RunContext runs = new RunContext(
                desk, SampleBooks.ids(), window, tasks, texts, new Measures(texts, Units.METRIC), DayOrder.DAY_FIRST);
        UndoActions undo = new UndoActions(runs);
        List<Place> places = new ArrayList<>(List.of(place));
        places.addAll(others.length > 0 ? List.of(others) : List.of(new RunSheetPlace(runs, undo)));
        pane = new ShellPane(context, places, undo.commands(), List.of());
        pane.logbook("Marrowgate, sample season");
        window.go(PlaceId.ENGINES);
        tasks.awaitIdle();
    }

    /** What was opened on its sheet last; a run is on the run sheet. */
    @Nullable
    Entry<?> corrected() {
        return corrected;
    }

    private void correct(Entry<?> entry) {
        corrected = entry;
        if (entry.fact() instanceof Run) {
            window.go(PlaceId.RUN_SHEET, entry.id().text());
        }
    }

    static Desk sample(Path folder) {
        return new SampleBooks(folder).open();
    }

    /** The same season without a file, for what does not depend on one: opening and closing a file takes longer. */
    static Desk inMemory() {
        return SampleBook.written(SampleBook.OPENING);
    }

    static Texts english() {
        return Texts.in(Locale.UK);
    }

    /** Goes to the engine of this number. */
    EnginesWindow engine(String number) {
        String id = desk.view()
                .facts()
                .of(Engine.class)
                .named(number)
                .orElseThrow()
                .id()
                .text();
        window.go(PlaceId.ENGINES, id);
        tasks.awaitIdle();
        return this;
    }

    /** Opens the part of this mark. */
    EnginesWindow part(String mark) {
        String id = desk.view()
                .facts()
                .of(Part.class)
                .named(mark)
                .orElseThrow()
                .id()
                .text();
        window.go(PlaceId.ENGINES, id);
        tasks.awaitIdle();
        return this;
    }

    /** Opens the running time of the part in hand. */
    EnginesWindow behindItsLife() {
        JTable lives = place.part().lives().table().table();
        lives.setRowSelectionInterval(0, 0);
        lives.getActionMap().get("wm-open").actionPerformed(null);
        tasks.awaitIdle();
        return this;
    }

    /** Opens the figure since rebuild of the engine in hand. */
    EnginesWindow behindSinceRebuild() {
        place.sheet().head().sinceRebuildButton().doClick();
        tasks.awaitIdle();
        return this;
    }

    /** The row of the entries behind the figure that is named so. */
    BehindLine entry(String named) {
        return place.sheet().beside().behind().entries().shown().stream()
                .filter(line -> line.words().contains(named))
                .findFirst()
                .orElseThrow();
    }

    void select(BehindLine line) {
        place.sheet().beside().behind().entries().select(Objects.requireNonNull(line.id()));
    }

    /** Types words into the field above a list. */
    void filter(SheetTable<?> list, String words) {
        list.getActionMap().get(SheetTable.FILTER).actionPerformed(null);
        root(1366, 768);
        new Ui(list).field("Filter this list").setText(words);
        tasks.awaitIdle();
    }

    /** The same program started again: another window over the same logbook and the same settings. */
    EnginesWindow again() {
        tasks.awaitIdle();
        EnginesWindow next = new EnginesWindow(desk, look, texts, settings);
        close();
        return next;
    }

    /** The page as text, as the window shows it. */
    String said() {
        return GoldenText.of(pane);
    }

    JRootPane root(int width, int height) {
        JRootPane root = Stage.window(pane, pane::menuBar, width, height);
        tasks.awaitIdle();
        return Stage.lay(root, width, height);
    }

    @Override
    public void close() {
        tasks.close();
    }
}
