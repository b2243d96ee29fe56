package witnessmark.desktop.sheets;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JRootPane;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.beforewego.BeforeWeGoPlace;
import witnessmark.desktop.beforewego.BeginActions;
import witnessmark.desktop.beforewego.OutLine;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.exchange.CsvStartingValues;
import witnessmark.logbook.sheets.OwnLogbook;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** A window over a logbook of its own, with the sheets shown over its first place. */
final class SheetsWindow implements AutoCloseable {
    final OwnLogbook own;
    final Desk window = new Desk();
    Sheets sheets;
    final Texts texts;
    private final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    private final BeforeWeGoPlace place;
    private final ShellPane pane;
    private @Nullable Aside shown;

    SheetsWindow(Path folder, Look look, Texts texts) {
        this.texts = texts;
        own = new OwnLogbook(folder);
        sheets = made();
        place = new BeforeWeGoPlace(
                new SheetTools(texts, tasks, new MemorySettings()),
                new Measures(texts, Units.METRIC),
                window,
                own.desk::view,
                new BeginActions(
                        () -> sheets.addCar(),
                        () -> sheets.addEngine(),
                        () -> {},
                        () -> {},
                        () -> {},
                        () -> {},
                        () -> {}),
                () -> {});
        show();
        pane = new ShellPane(
                new ShellContext(
                        texts, tasks, new MemorySettings(), look, window, new AboutFacts("0.1.0", List.of()), () -> {}),
                List.of(place),
                sheets.commands(),
                List.of());
        window.go(PlaceId.BEFORE_WE_GO);
    }

    /** The same sheets as after the program was closed and started again. */
    void newSheets() {
        place.dismiss();
        sheets = made();
        show();
    }

    private Sheets made() {
        return new Sheets(new SheetsContext(
                own.desk,
                own.ids,
                window,
                tasks,
                texts,
                new Measures(texts, Units.METRIC),
                DayOrder.DAY_FIRST,
                new MemorySettings(),
                new CsvStartingValues(),
                () -> own.desk.undo().orThrow()));
    }

    private void show() {
        sheets.showIn(
                aside -> {
                    shown = aside;
                    place.stepAside(aside);
                },
                () -> {
                    shown = null;
                    place.dismiss();
                });
    }

    /** Says what the place under the sheets asks for what was begun. */
    void onBegun(Supplier<List<OutLine>> begun) {
        place.onBegun(begun);
    }

    Ui ui() {
        return new Ui(place.component());
    }

    /** What is shown over the place. */
    @Nullable
    Aside shown() {
        return shown;
    }

    void awaitIdle() {
        tasks.awaitIdle();
    }

    JRootPane lay(int width, int height) {
        return Stage.window(pane, pane::menuBar, width, height);
    }

    /** The whole of it, to be put in a frame. */
    ShellPane pane() {
        return pane;
    }

    /** Opens a sheet by its key. */
    void open(String key) {
        ask(key);
        lay(1366, 768);
    }

    /** The same, wherever the window stands. */
    void ask(String key) {
        sheets.commands().stream()
                .filter(command -> command.key().equals("sheets.command." + key))
                .findFirst()
                .orElseThrow()
                .perform();
        tasks.awaitIdle();
    }

    @Override
    public void close() {
        tasks.awaitIdle();
        tasks.close();
        own.close();
    }
}
