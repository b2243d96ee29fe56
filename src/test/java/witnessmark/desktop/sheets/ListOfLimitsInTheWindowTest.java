package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JRootPane;
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
import witnessmark.domain.Limit;
import witnessmark.logbook.sheets.AddEngine;
import witnessmark.logbook.sheets.SetLimit;
import witnessmark.wording.Texts;

/** The list of limits as people meet it: every class of engine, empty and filled in. */
@UiTest
class ListOfLimitsInTheWindowTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}, zoom {1}, pseudo-language {2}")
    @CsvSource({"LIGHT, 1.0, false", "DARK, 1.0, false", "DARK, 1.5, false", "LIGHT, 1.5, false", "LIGHT, 1.0, true"})
    void every_class_fits_in_the_window_and_each_figure_has_a_name_of_its_own(Theme theme, float zoom, boolean pseudo) {
        Texts texts = pseudo ? Texts.pseudo() : Texts.in(Locale.UK);
        try (SheetsWindow window = new SheetsWindow(folder, Looks.look(theme, zoom), texts)) {
            stock(window);
            window.open("list_limits");
            for (int of = 0; of < 5; of++) {
                classes(window).setSelectedIndex(of);
                for (int[] size : new int[][] {{1100, 700}, {1366, 768}, {1366, 1500}}) {
                    JRootPane root = window.lay(size[0], size[1]);
                    assertThat(LayoutRules.broken(root)).isEmpty();
                    assertThat(AccessibleWalk.faults(root)).isEmpty();
                    assertThat(Contrast.tooLow(root)).isEmpty();
                    if (!pseudo) {
                        Pictures.write(
                                "list-of-limits-%d-%s-%s-%d"
                                        .formatted(of, theme, zoom, size[1])
                                        .toLowerCase(Locale.ROOT),
                                root);
                    }
                }
            }
        }
    }

    @Test
    void picking_a_class_shows_where_to_begin_and_fills_nothing_in() {
        try (SheetsWindow window = open()) {
            stock(window);
            window.open("list_limits");
            assertThat(figures(window)).isEmpty();
            for (int of = 0; of < 5; of++) {
                classes(window).setSelectedIndex(of);
                window.lay(1366, 768);
                assertThat(figures(window))
                        .hasSizeGreaterThan(40)
                        .allMatch(field -> field.getText().isEmpty());
            }
            classes(window).setSelectedIndex(1);
            window.lay(1366, 768);
            assertThat(note(window, "Valve springs: renew, h")).startsWith("10 to 20 h, common practice, no source");
            assertThat(note(window, "Block: renew, h")).isEqualTo("on condition, common practice, no source");
            assertThat(note(window, "Damper: renew, months"))
                    .isEqualTo("60 months, elastomer, common practice, no source");
            assertThat(note(window, "Rods: renew, h")).contains("aluminium 10 to 25 h");
        }
    }

    @Test
    void filled_by_keys_saved_and_taken_back_at_once() {
        try (SheetsWindow window = open()) {
            stock(window);
            window.open("list_limits");
            classes(window).setSelectedIndex(1);
            window.lay(1366, 768);
            Ui.type(window.ui().field("Valve springs: renew, h"), "12");
            Ui.type(window.ui().field("Rods: crack test, h"), "40");
            assertThat(note(window, "Valve springs: renew, h")).startsWith("= 12 h; 10 to 20 h");
            Ui.press(page(window), Keys.menu(KeyEvent.VK_ENTER));
            window.awaitIdle();
            assertThat(window.shown()).isNull();
            assertThat(limits(window)).containsExactlyInAnyOrder("renew valve springs", "crack-test rods");
            window.own.desk.undo().orThrow();
            assertThat(limits(window)).isEmpty();
        }
    }

    @Test
    void a_save_with_no_figure_says_so_and_a_bad_one_keeps_all_that_was_typed() {
        try (SheetsWindow window = open()) {
            stock(window);
            window.open("list_limits");
            classes(window).setSelectedIndex(2);
            window.lay(1366, 768);
            window.ui().button("Save").doClick();
            window.awaitIdle();
            assertThat(note(window, "Crank: crack test, h")).contains("No figure is filled in that is not set already");
            Ui.type(window.ui().field("Valve springs: renew, h"), "12");
            Ui.type(window.ui().field("Rod bolts: renew, h"), "0");
            window.ui().button("Save").doClick();
            window.awaitIdle();
            assertThat(window.ui().field("Rod bolts: renew, h").getClientProperty("JComponent.outline"))
                    .isEqualTo("error");
            assertThat(window.ui().field("Valve springs: renew, h").getText()).isEqualTo("12");
            assertThat(limits(window)).isEmpty();
            window.newSheets();
            window.open("list_limits");
            window.awaitIdle();
            window.lay(1366, 768);
            assertThat(window.ui().field("Valve springs: renew, h").getText()).isEqualTo("12");
        }
    }

    @Test
    void what_is_set_already_is_said_and_what_takes_its_place() {
        try (SheetsWindow window = open()) {
            stock(window);
            window.own
                    .save(
                            new SetLimit(),
                            "part_kind",
                            "valve springs",
                            "work_due",
                            "renew valve springs",
                            "figure",
                            "12",
                            "source",
                            "sheet of January",
                            "limit_from",
                            "15 Jan")
                    .orThrow();
            window.open("list_limits");
            classes(window).setSelectedIndex(2);
            window.lay(1366, 768);
            String springs = "Valve springs: renew, h";
            assertThat(note(window, springs)).startsWith("now 12 h; 10 to 20 h");
            window.ui().field(springs).setText("14");
            assertThat(note(window, springs)).startsWith("= 14 h; 12 h ends Mon 9 Mar 2026");
            Ui.type(window.ui().field("Rings: renew, h"), "20");
            Pictures.write("list-of-limits-filled", window.lay(1366, 900));
            window.ui().field(springs).setText("12");
            assertThat(note(window, springs)).startsWith("= 12 h, set already");
        }
    }

    private static List<String> limits(SheetsWindow window) {
        return window.own.desk.view().facts().of(Limit.class).where(limit -> true).stream()
                .map(limit -> limit.fact().name())
                .toList();
    }

    private static javax.swing.JComboBox<?> classes(SheetsWindow window) {
        return Stage.visible(page(window)).stream()
                .filter(javax.swing.JComboBox.class::isInstance)
                .map(box -> (javax.swing.JComboBox<?>) box)
                .findFirst()
                .orElseThrow();
    }

    /** The fields of figures in sight. */
    private static List<JTextComponent> figures(SheetsWindow window) {
        return fields(window)
                .filter(field ->
                        field.getAccessibleContext().getAccessibleName().contains(": "))
                .toList();
    }

    private static Stream<JTextComponent> fields(SheetsWindow window) {
        return Stage.visible(page(window)).stream()
                .filter(javax.swing.JTextField.class::isInstance)
                .map(JTextComponent.class::cast);
    }

    private static String note(SheetsWindow window, String field) {
        return String.valueOf(window.ui().field(field).getAccessibleContext().getAccessibleDescription());
    }

    private static void stock(SheetsWindow window) {
        window.own
                .save(new AddEngine(), "number", "H1", "design_name", "Quarrow 2.0", "cylinders", "4", "hours", "9.5")
                .orThrow();
    }

    private SheetsWindow open() {
        return new SheetsWindow(folder, Looks.light(), Texts.in(Locale.UK));
    }

    private static JComponent page(SheetsWindow window) {
        return Objects.requireNonNull(window.shown()).component();
    }
}
