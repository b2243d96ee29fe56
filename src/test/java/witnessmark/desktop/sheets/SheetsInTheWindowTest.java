package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Event;
import witnessmark.domain.Reading;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.sheets.AddCar;
import witnessmark.logbook.sheets.AddEngine;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.wording.Texts;

/** The sheets as people meet them. */
@UiTest
class SheetsInTheWindowTest {
    private static final int[][] SIZES = {{1366, 768}, {1100, 700}};

    @TempDir
    Path folder;

    @Test
    void a_car_is_typed_and_saved_by_keys_and_the_sheet_goes_away() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            window.open("add_car");
            JTextComponent name = window.ui().field("Number or name");
            Ui.type(name, "7");
            Ui.press(page(window), Keys.menu(KeyEvent.VK_ENTER));
            window.awaitIdle();
            assertThat(window.own.desk.view().facts().of(Car.class).named("7")).isPresent();
            assertThat(window.shown()).isNull();
        }
    }

    @Test
    void a_stopped_save_keeps_what_was_typed_and_names_the_field() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            window.own.save(new AddCar(), "name", "7").orThrow();
            window.open("add_car");
            Ui.type(window.ui().field("Number or name"), "7");
            Ui.type(window.ui().field("Note"), "spare shell");
            Ui.press(page(window), Keys.menu(KeyEvent.VK_ENTER));
            window.awaitIdle();
            assertThat(window.own.desk.view().facts().of(Car.class).size()).isEqualTo(1);
            assertThat(window.ui().field("Note").getText()).isEqualTo("spare shell");
            JTextComponent name = window.ui().field("Number or name");
            assertThat(name.getAccessibleContext().getAccessibleDescription()).contains("7");
            assertThat(name.getClientProperty("JComponent.outline")).isEqualTo("error");
        }
    }

    @Test
    void what_was_typed_and_not_saved_is_on_the_sheet_again_after_the_window_was_closed() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            window.open("add_car");
            Ui.type(window.ui().field("Note"), "spare shell");
            window.awaitIdle();
            window.newSheets();
            window.open("add_car");
            window.awaitIdle();
            window.lay(1366, 768);
            assertThat(window.ui().field("Note").getText()).isEqualTo("spare shell");
            window.ui().button("Clear sheet").doClick();
            window.awaitIdle();
            window.newSheets();
            window.open("add_car");
            window.awaitIdle();
            window.lay(1366, 768);
            assertThat(window.ui().field("Note").getText()).isEmpty();
        }
    }

    @Test
    void what_was_begun_and_not_saved_stands_on_the_first_place_and_leads_back_until_it_is_saved() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            window.own.save(new AddCar(), "name", "7").orThrow();
            window.open("add_person");
            Ui.type(window.ui().field("Name"), "Bea");
            window.awaitIdle();
            window.newSheets();
            window.awaitIdle();

            assertThat(window.sheets.begun()).singleElement().satisfies(line -> {
                assertThat(line.title()).isEqualTo("Add a person");
                assertThat(line.first()).startsWith("left ");
                window.sheets.open(line.sheet());
            });
            window.awaitIdle();
            window.lay(1366, 768);
            assertThat(window.ui().field("Name").getText()).isEqualTo("Bea");

            Ui.press(page(window), Keys.menu(KeyEvent.VK_ENTER));
            window.awaitIdle();
            assertThat(window.sheets.begun()).isEmpty();
        }
    }

    @Test
    void a_contradiction_with_the_logbook_is_said_beside_its_field_and_in_full_when_saving() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            stock(window);
            window.open("put_engine");
            window.ui().choice("Engine").setSelectedIndex(0);
            window.ui().choice("Car").setSelectedIndex(0);
            window.ui().button("Save").doClick();
            window.awaitIdle();
            assertThat(window.ui().choice("Engine").getClientProperty("JComponent.outline"))
                    .isEqualTo("error");
        }
    }

    @Test
    void a_refusal_goes_when_what_it_was_about_is_put_right() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            stock(window);
            window.open("put_engine");
            window.ui().choice("Engine").setSelectedIndex(0);
            window.ui().choice("Car").setSelectedIndex(0);
            window.ui().field("Since").setText("8 Mar");
            window.ui().button("Save").doClick();
            window.awaitIdle();
            window.lay(1366, 768);
            assertThat(refusals(window)).hasSize(1);
            window.ui().field("Oil, cooler, anything else").setText("dry sump");
            window.awaitIdle();
            window.lay(1366, 768);
            assertThat(window.ui().field("Since").getClientProperty("JComponent.outline"))
                    .as("still refused under its field, judged anew")
                    .isEqualTo("error");
            window.ui().field("Since").setText("9 Mar");
            window.awaitIdle();
            window.lay(1366, 768);
            assertThat(refusals(window)).isEmpty();
        }
    }

    /** What the page says is not saved, and why. */
    private static List<String> refusals(SheetsWindow window) {
        return Stage.visible(page(window)).stream()
                .filter(JTextArea.class::isInstance)
                .map(area -> ((JTextArea) area).getText())
                .filter(text -> text.contains("not saved"))
                .toList();
    }

    @Test
    void what_only_the_whole_logbook_can_tell_is_said_while_typing_before_anybody_saves() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            stock(window);
            window.open("put_engine");
            window.ui().choice("Engine").setSelectedIndex(0);
            window.ui().choice("Car").setSelectedIndex(0);
            window.ui().field("Since").setText("8 Mar");
            window.awaitIdle();
            assertThat(window.ui().field("Since").getClientProperty("JComponent.outline"))
                    .isEqualTo("error");
            window.ui().button("Save").doClick();
            window.awaitIdle();
            assertThat(window.shown()).isNotNull();
        }
    }

    @Test
    void an_engine_is_typed_with_hours_known_about_and_fields_come_and_go_with_the_choice() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            window.open("add_engine");
            window.ui().choice("How known").setSelectedIndex(2);
            window.lay(1366, 768);
            Ui.type(window.ui().field("Number"), "H1");
            Ui.type(window.ui().field("Name of the new design"), "Quarrow 2.0");
            Ui.type(window.ui().field("Cylinders"), "4");
            Ui.type(window.ui().field("Hours, h"), "9");
            Ui.type(window.ui().field("At least, h"), "8");
            Ui.type(window.ui().field("At most, h"), "10");
            window.ui().button("Save").doClick();
            window.awaitIdle();
            assertThat(window.own.desk.view().facts().of(Engine.class).named("H1"))
                    .isPresent();
        }
    }

    @Test
    void a_timetable_is_read_back_line_by_line_as_it_is_typed() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            window.open("add_event");
            Ui.type(window.ui().field("Name"), "Round 1");
            Ui.type(window.ui().field("First day"), "Sat 14 Mar");
            window.ui().field("Runs, one to a line").setText("P1 09:00 25 min\nR1 half three");
            window.lay(1366, 768);
            JTextComponent back = window.ui().field("Practice 1, Sat 14 Mar 2026, 09:00, 25 min\n? R1 half three");
            assertThat(back.isEditable()).isFalse();
            window.ui().field("Runs, one to a line").setText("P1 09:00 25 min\nR1 15:30");
            window.ui().button("Save").doClick();
            window.awaitIdle();
            assertThat(window.own.desk.view().facts().of(Event.class).named("Round 1"))
                    .isPresent();
        }
    }

    @Test
    void leak_down_of_four_cylinders_is_written_by_keys_with_place_and_figure_only_after_the_first() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            stock(window);
            window.open("write_reading");
            window.ui().choice("Engine or part").setSelectedIndex(0);
            int keys = 0;
            for (String cylinder : List.of("1", "2", "3", "4")) {
                keys = cylinder.equals("1") ? 0 : keys + cylinder.length() + "4.5".length() + 2;
                Ui.type(window.ui().field("Cylinder or place"), cylinder);
                Ui.type(window.ui().field("Figure"), "4.5");
                Ui.press(page(window), Keys.menu(KeyEvent.VK_ENTER));
                window.awaitIdle();
                window.lay(1366, 768);
                assertThat(window.shown()).isNotNull();
                assertThat(java.util.Objects.requireNonNull(window.shown()).firstFocus())
                        .isSameAs(window.ui().field("Cylinder or place"));
            }
            assertThat(keys)
                    .as("Enter after the place and Ctrl+Enter after the figure")
                    .isLessThan(20);
            assertThat(window.own.desk.view().facts().of(Reading.class).where(reading -> true))
                    .extracting(reading -> reading.fact().place())
                    .containsExactly("1", "2", "3", "4");
        }
    }

    /** Each is opened once: laid out as it comes, where the sizes are of their own, then filled and painted. */
    @ParameterizedTest(name = "{0} at {1}, pseudo-language {2}")
    @CsvSource({"LIGHT, 1.0, false", "LIGHT, 1.5, false", "LIGHT, 1.0, true", "DARK, 1.0, false"})
    void nothing_overlaps_or_is_cut_everything_has_a_name_of_its_own_and_words_stand_out(
            Theme theme, float zoom, boolean pseudo) {
        Texts texts = pseudo ? Texts.pseudo() : Texts.in(Locale.UK);
        try (SheetsWindow window = new SheetsWindow(folder, Looks.look(theme, zoom), texts)) {
            stock(window);
            for (LogSheet sheet : window.sheets.all()) {
                window.open(sheet.key());
                if (theme == Theme.LIGHT) {
                    keepsTheRules(window, sheet.key());
                }
                if (zoom == 1.0f && !pseudo) {
                    fill(window, sheet.key());
                    paints(window, sheet.key(), theme);
                }
            }
        }
    }

    private static void keepsTheRules(SheetsWindow window, String sheet) {
        for (int[] size : SIZES) {
            JRootPane root = window.lay(size[0], size[1]);
            assertThat(LayoutRules.broken(root)).as(sheet).isEmpty();
            assertThat(AccessibleWalk.faults(root)).as(sheet).isEmpty();
        }
    }

    private static void paints(SheetsWindow window, String sheet, Theme theme) {
        JRootPane root = window.lay(1366, 768);
        BufferedImage image = Pictures.write(("sheet-" + sheet + "-" + theme).toLowerCase(Locale.ROOT), root);
        assertThat(Pictures.colours(image, 51)).isGreaterThan(50);
        assertThat(Contrast.tooLow(root)).as(sheet).isEmpty();
    }

    /** Marks of a large logbook take a while; the window goes on meanwhile, and the sheet asked for last is shown. */
    @Test
    void a_sheet_comes_up_once_what_it_asks_is_worked_out_off_the_event_thread() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            stock(window);
            window.sheets.signClear();
            window.sheets.signRunOn();
            assertThat(window.shown()).isNull();
            window.awaitIdle();
            assertThat(window.shown().heading()).isEqualTo("Run on");
            window.own.desk.undo().orThrow();
            window.window.changed();
            window.awaitIdle();
            assertThat(window.shown().heading()).isEqualTo("Run on");
        }
    }

    @Test
    void what_is_written_is_listed_opened_by_keys_corrected_and_taken_back() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            stock(window);
            window.sheets.openList();
            window.awaitIdle();
            window.lay(1366, 768);
            window.ui().choice("Kind").setSelectedItem(RecordTypes.of(EngineInCar.class));
            window.awaitIdle();
            JTable list = window.ui().table("What is written");
            list.setRowSelectionInterval(0, 0);
            window.ui().button("Open").doClick();
            window.awaitIdle();
            window.lay(1366, 768);
            window.ui().field("Note").setText("oil kept");
            window.ui().field("Why it is corrected, or struck out").setText("forgotten");
            Ui.press(page(window), Keys.menu(KeyEvent.VK_ENTER));
            window.awaitIdle();
            assertThat(stays(window)).containsExactly("oil kept");
            assertThat(window.own.desk.undoable().orElseThrow().why())
                    .contains("engine in a car")
                    .endsWith(": forgotten");
            window.own.desk.undo().orThrow();
            assertThat(stays(window)).containsExactly("");
        }
    }

    @Test
    void striking_out_asks_for_a_reason_and_what_is_out_can_only_be_restored() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            stock(window);
            openStay(window);
            window.ui().button("Strike out").doClick();
            window.awaitIdle();
            JTextComponent because = window.ui().field("Why it is corrected, or struck out");
            assertThat(because.getClientProperty("JComponent.outline")).isEqualTo("error");
            because.setText("never went in");
            window.ui().button("Strike out").doClick();
            window.awaitIdle();
            assertThat(stays(window)).isEmpty();
            openStay(window);
            assertThat(Stage.visible(page(window)).stream()
                            .filter(javax.swing.JButton.class::isInstance)
                            .map(button -> ((javax.swing.JButton) button).getText()))
                    .doesNotContain("Save changes");
            window.ui().button("Restore").doClick();
            window.awaitIdle();
            assertThat(stays(window)).containsExactly("");
        }
    }

    private static void openStay(SheetsWindow window) {
        window.sheets.correct(
                window.own.desk.view().facts().of(EngineInCar.class).all().get(0), () -> {});
        window.awaitIdle();
        window.lay(1366, 768);
    }

    private static List<String> stays(SheetsWindow window) {
        return window.own.desk.view().facts().of(EngineInCar.class).where(stay -> true).stream()
                .map(stay -> stay.fact().note())
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"LIGHT, 1.0, false", "DARK, 1.5, false", "LIGHT, 1.0, true"})
    void every_kind_of_entry_has_a_sheet_on_which_nothing_overlaps(Theme theme, float zoom, boolean pseudo) {
        Texts texts = pseudo ? Texts.pseudo() : Texts.in(Locale.UK);
        try (SheetsWindow window = new SheetsWindow(folder, Looks.look(theme, zoom), texts)) {
            stock(window);
            window.sheets.openList();
            window.awaitIdle();
            look(window, "list", theme, zoom, pseudo);
            for (RecordType<?> type : RecordTypes.all()) {
                for (witnessmark.domain.Entry<?> entry : first(window, type)) {
                    window.sheets.correct(entry);
                    window.awaitIdle();
                    look(window, type.name(), theme, zoom, pseudo);
                }
            }
        }
    }

    private static List<? extends witnessmark.domain.Entry<?>> first(SheetsWindow window, RecordType<?> type) {
        return window.own.desk.view().facts().of(type.kind()).all().stream()
                .limit(1)
                .toList();
    }

    private static void look(SheetsWindow window, String name, Theme theme, float zoom, boolean pseudo) {
        keepsTheRules(window, name);
        JRootPane root = window.lay(1366, 768);
        assertThat(Contrast.tooLow(root)).as(name).isEmpty();
        if (!pseudo) {
            Pictures.write(("written-" + name + "-" + theme + "-" + zoom).toLowerCase(Locale.ROOT), root);
        }
    }

    private static void stock(SheetsWindow window) {
        window.own.save(new AddCar(), "name", "7").orThrow();
        window.own
                .save(
                        new AddEngine(),
                        "number",
                        "H1",
                        "design_name",
                        "Quarrow 2.0",
                        "cylinders",
                        "4",
                        "hours",
                        "9.5",
                        "car",
                        "7")
                .orThrow();
    }

    /** Some typing, so that notes, echoes, queries and stops are to be seen. */
    private static void fill(SheetsWindow window, String key) {
        Ui ui = window.ui();
        switch (key) {
            case "add_engine" -> {
                Ui.type(ui.field("Number"), "H2");
                ui.choice("Design").setSelectedIndex(1);
                ui.choice("How known").setSelectedIndex(2);
                ui.choice("Car").setSelectedIndex(1);
                window.lay(1366, 768);
                Ui.type(ui.field("Limiter, rpm"), "8200");
                Ui.type(ui.field("Hours, h"), "1h7x");
                ui.button("Save").doClick();
            }
            case "fit_part" -> {
                ui.choice("Engine or car").setSelectedIndex(0);
                ui.choice("Position").setSelectedIndex(9);
                Ui.type(ui.field("Mark"), "VS-1");
            }
            case "add_event" -> {
                Ui.type(ui.field("Name"), "Round 1");
                Ui.type(ui.field("First day"), "14 Mar");
                Ui.type(ui.field("Last day"), "15 Mar");
                ui.field("Runs, one to a line").setText("P1 Sat 09:00 25 min\nQ Sat 14:30 20 min\nR1 Sun half three");
            }
            case "write_reading" -> {
                ui.choice("Engine or part").setSelectedIndex(0);
                Ui.type(ui.field("Cylinder or place"), "2");
                Ui.type(ui.field("Figure"), "145 %");
                ui.button("Save").doClick();
            }
            case "write_hold" -> {
                ui.choice("Engine or part").setSelectedIndex(0);
                Ui.type(ui.field("What was seen"), "detonation mark on the plug of 3");
                Ui.type(ui.field("To be looked at before it may be cleared"), "head off, ring lands looked at");
                ui.button("Save").doClick();
                window.awaitIdle();
                window.open(key);
            }
            case "sign_clear" -> {
                ui.choice("What holds").setSelectedIndex(0);
                Ui.type(ui.field("What was done"), "head off");
                Ui.type(ui.field("What was found"), "nothing");
                ui.button("Save").doClick();
            }
            case "set_trigger" -> {
                Ui.type(ui.field("Figure"), "8500");
                Ui.type(ui.field("For at least"), "0.1");
                Ui.type(ui.field("Parts it holds"), "rods, rod b, valve springs");
            }
            case "set_reading_limit" -> {
                Ui.type(ui.field("At least"), "12");
                Ui.type(ui.field("At most"), "10");
                ui.button("Save").doClick();
            }
            default -> {
                // as it comes
            }
        }
        window.awaitIdle();
    }

    private SheetsWindow open(Texts texts) {
        return new SheetsWindow(folder, Looks.light(), texts);
    }

    private static JComponent page(SheetsWindow window) {
        return java.util.Objects.requireNonNull(window.shown()).component();
    }
}
