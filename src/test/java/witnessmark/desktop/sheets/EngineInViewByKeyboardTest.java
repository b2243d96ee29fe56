package witnessmark.desktop.sheets;

import static java.awt.event.InputEvent.ALT_DOWN_MASK;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.beforewego.BeforeWeGoPlace;
import witnessmark.desktop.beforewego.BeginActions;
import witnessmark.desktop.engines.EnginesPlace;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.exchange.CsvStartingValues;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.sheets.Choice;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** With an engine in view, what the Record menu opens asks no more which engine. The sample, no mouse. */
@UiTest(display = true)
class EngineInViewByKeyboardTest {
    private final JFrame frame = new JFrame();
    private final Texts texts = Texts.in(Locale.UK);
    private final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    private final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    private final Keyboard keys = new Keyboard(tasks::awaitIdle);
    private Desk desk;
    private EnginesPlace engines;
    private Sheets sheets;
    private @Nullable Aside shown;

    @BeforeEach
    void show() {
        desk = SampleBook.written(SampleBook.OPENING);
        Measures measures = new Measures(texts, Units.METRIC);
        MemorySettings settings = new MemorySettings();
        sheets = new Sheets(new SheetsContext(
                desk,
                SampleBook.ids(),
                window,
                tasks,
                texts,
                measures,
                DayOrder.DAY_FIRST,
                settings,
                new CsvStartingValues(),
                () -> {}));
        BeforeWeGoPlace first = new BeforeWeGoPlace(
                new SheetTools(texts, tasks, settings),
                measures,
                window,
                desk::view,
                new BeginActions(() -> {}, () -> {}, () -> {}, () -> {}, () -> {}, () -> {}, () -> {}),
                () -> {});
        engines =
                new EnginesPlace(texts, measures, tasks, window, () -> desk, settings, DayOrder.DAY_FIRST, entry -> {});
        sheets.engineInView(engines::engineInView);
        sheets.onRead(engines::read);
        sheets.showIn(
                page -> {
                    shown = page;
                    window.go(PlaceId.BEFORE_WE_GO);
                    first.stepAside(page);
                },
                first::dismiss);
        ShellPane pane = new ShellPane(
                new ShellContext(
                        texts, tasks, settings, Looks.light(), window, new AboutFacts("0.1.0", List.of()), () -> {}),
                List.of(first, engines),
                sheets.commands(),
                List.of());
        frame.setContentPane(pane);
        frame.setJMenuBar(pane.menuBar());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        toEngines();
    }

    @AfterEach
    void close() {
        frame.dispose();
        tasks.awaitIdle();
        tasks.close();
        desk.logbook().close();
    }

    private void toEngines() {
        window.go(PlaceId.ENGINES);
        tasks.awaitIdle();
        Focus.await(engines.firstFocus());
    }

    /** Alt with the letter of the Record menu, then arrows down to each of these and into it. */
    private void record(String... items) {
        keys.press(KeyEvent.VK_R, ALT_DOWN_MASK);
        for (String item : items) {
            for (int i = 0; i < 20 && !item.equals(inHand().getText()); i++) {
                keys.press(KeyEvent.VK_DOWN);
            }
            assertThat(inHand().getText()).isEqualTo(item);
            keys.press(inHand() instanceof JMenu ? KeyEvent.VK_RIGHT : KeyEvent.VK_ENTER);
        }
    }

    private static JMenuItem inHand() {
        MenuElement last = null;
        for (MenuElement element : MenuSelectionManager.defaultManager().getSelectedPath()) {
            last = element instanceof JMenuItem ? element : last;
        }
        return (JMenuItem) last;
    }

    private Ui sheet() {
        assertThat(shown).isNotNull();
        return new Ui(shown.component());
    }

    private void open(String sheet) {
        sheets.commands().stream()
                .filter(command -> command.key().equals("sheets.command." + sheet))
                .findFirst()
                .orElseThrow()
                .perform();
        tasks.awaitIdle();
    }

    private String picked(String field) {
        return String.valueOf(sheet().choice(field).getSelectedItem());
    }

    @Test
    void a_reading_a_build_and_a_skim_begin_with_the_engine_in_hand() {
        String k03 = engines.engineInView().orElseThrow().text();
        record("New reading…");
        assertThat(picked("Engine or part")).contains(k03);
        toEngines();
        record("Work", "Write down a build…");
        assertThat(picked("Engine")).contains(k03);
        toEngines();
        record("Work", "Write down work…");
        String head = desk.view()
                .facts()
                .of(Part.class)
                .named("HD-03")
                .orElseThrow()
                .id()
                .text();
        assertThat(picked("On")).as("the head on K03").contains(head);
    }

    @Test
    void a_dyno_sheet_that_was_saved_shows_its_curve_under_its_engine() {
        window.go(PlaceId.BEFORE_WE_GO);
        open("write_dyno_sheet");
        String run = ((Choice)
                        Objects.requireNonNull(sheet().choice("Run on the dyno").getSelectedItem()))
                .key();
        sheet().field("Dyno").setText("Engine dyno 1");
        sheet().field("Pulls, a line for each speed").setText("4000 171\n5000 180\n6000 178");
        tasks.awaitIdle();
        Ui.press(Objects.requireNonNull(shown).component(), Keys.menu(KeyEvent.VK_ENTER));
        tasks.awaitIdle();

        DynoSheet written = desk.view()
                .facts()
                .of(DynoSheet.class)
                .where(sheet -> sheet.run().text().equals(run))
                .get(0)
                .fact();
        Id<Engine> engine = desk.view().facts().of(Run.class).get(written.run()).engine();
        assertThat(engines.engineInView()).contains(engine);
        JTable dyno = new Ui(engines.component()).table(texts.get("engines.dyno.list"));
        assertThat(dyno.isShowing()).isTrue();
        assertThat(dyno.getSelectedRowCount()).isEqualTo(1);
        assertThat(dyno.getValueAt(dyno.getSelectedRow(), 3)).asString().contains("Fri 26 Jun 2026");
    }

    @Test
    void the_engine_of_which_something_was_read_is_in_hand_when_one_comes_to_the_engines() {
        Id<Engine> k05 =
                desk.view().facts().of(Engine.class).named("K05").orElseThrow().id();
        window.go(PlaceId.BEFORE_WE_GO);
        open("write_reading");
        JComboBox<?> on = sheet().choice("Engine or part");
        IntStream.range(0, on.getItemCount())
                .filter(at -> String.valueOf(on.getItemAt(at)).contains(k05.text()))
                .findFirst()
                .ifPresent(on::setSelectedIndex);
        sheet().field("Cylinder or place").setText("1");
        sheet().field("Figure").setText("5 %");
        tasks.awaitIdle();
        Ui.press(Objects.requireNonNull(shown).component(), Keys.menuShift(KeyEvent.VK_ENTER));
        tasks.awaitIdle();
        toEngines();

        assertThat(engines.engineInView()).contains(k05);
    }

    @Test
    void from_another_place_nothing_is_picked() {
        String k03 = engines.engineInView().orElseThrow().text();
        record("New reading…");
        keys.press(KeyEvent.VK_ESCAPE);
        assertThat(engines.engineInView()).isEmpty();
        record("New reading…");
        assertThat(picked("Engine or part")).doesNotContain(k03);
    }
}
