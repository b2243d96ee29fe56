package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.StatusStrip;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.sheets.AddEvent;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.sheets.ReportIncident;
import witnessmark.logbook.sheets.WriteCause;
import witnessmark.wording.Texts;

/** A sheet is cleared without a question, so what was typed can be had back. */
@UiTest
class ClearedSheetTest {
    @TempDir
    Path folder;

    private SheetsWindow window;

    @BeforeEach
    void open() {
        window = new SheetsWindow(folder, Looks.light(), Texts.in(Locale.UK));
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void what_was_typed_is_put_back_by_the_strip() {
        window.open("add_event");
        type("Name", "Round 1");
        type("First day", "30 Feb");
        click("Clear sheet");
        assertThat(text("Name")).isEmpty();
        assertThat(window.sheets.begun()).isEmpty();
        assertThat(said()).isEqualTo("Sheet cleared. Nothing of it is in the logbook.");

        click("Undo");
        assertThat(text("Name")).isEqualTo("Round 1");
        assertThat(text("First day")).as("what cannot be read too").isEqualTo("30 Feb");
        assertThat(said()).isEqualTo("What you had typed is back on the sheet. Not in the logbook yet.");
    }

    @Test
    void the_key_for_undo_puts_it_back_and_takes_nothing_out_of_the_logbook() {
        window.own
                .save(new AddEvent(), "name", "Round 1", "circuit", "Ashdown", "first_day", "28 Nov 2026")
                .orThrow();
        window.open("add_event");
        type("Name", "Round 2");
        click("Clear sheet");
        click("Clear sheet"); // nothing stands on it: what was cleared is still to be had
        undo();
        assertThat(text("Name")).isEqualTo("Round 2");
        assertThat(window.own.desk.view().facts().of(Event.class).named("Round 1"))
                .isPresent();
    }

    @Test
    void what_was_typed_since_is_not_lost_either() {
        window.open("add_event");
        type("Name", "Round 1");
        click("Clear sheet");
        type("Name", "Round 2");
        click("Undo");
        assertThat(text("Name")).isEqualTo("Round 1");
        click("Undo");
        assertThat(text("Name")).isEqualTo("Round 2");
    }

    @Test
    void once_it_is_saved_there_is_nothing_to_put_back() {
        window.open("add_event");
        type("Name", "Round 1");
        click("Clear sheet");
        type("Name", "Round 2");
        type("First day", "28 Nov 2026");
        press(Keys.menuShift(KeyEvent.VK_ENTER));
        window.awaitIdle();
        undo();
        assertThat(text("Name")).isEmpty();
    }

    @Test
    void a_correction_put_back_as_it_is_written_can_be_had_again() {
        window.own
                .save(new AddEvent(), "name", "Round 1", "circuit", "Ashdown", "first_day", "28 Nov 2026")
                .orThrow();
        window.sheets.correct(window.own.the(Event.class, "Round 1"));
        window.awaitIdle();
        window.lay(1366, 768);
        type("Name", "Round 3");
        click("Put back");
        assertThat(text("Name")).isEqualTo("Round 1");
        assertThat(said()).isEqualTo("Put back as it is written. What you had typed is gone from the sheet.");
        undo();
        assertThat(text("Name")).isEqualTo("Round 3");
    }

    /** What was typed of one incident is not evidence of the next that a link leads to. */
    @Test
    void it_comes_back_as_what_it_was_about_whatever_the_sheet_was_opened_for_since() {
        Id<Incident> first = reported("INC-01");
        Id<Incident> second = reported("INC-02");
        cause(first);
        type("The cause in a line", "pin walked");
        click("Clear sheet");
        cause(second);
        undo();
        assertThat(text("The cause in a line")).isEqualTo("pin walked");
        assertThat(window.ui().choice("Incident").getSelectedItem().toString()).contains("INC-01");
    }

    private Id<Incident> reported(String mark) {
        window.own
                .save(
                        new ReportIncident(),
                        "incident_mark",
                        mark,
                        "incident_title",
                        "Misfire",
                        "incident_severity",
                        "retired",
                        "incident_found",
                        "at a check",
                        "when",
                        "4 Mar",
                        "incident_seen",
                        "misfires under load")
                .orThrow();
        return window.own
                .desk
                .view()
                .facts()
                .of(Incident.class)
                .named(mark)
                .orElseThrow()
                .id();
    }

    private void cause(Id<Incident> of) {
        window.sheets.open(new Prefilled(new WriteCause().key(), Map.of(WriteCause.INCIDENT, of.text())));
        window.awaitIdle();
        window.lay(1366, 768);
    }

    private void type(String field, String words) {
        window.ui().field(field).setText(words);
        window.awaitIdle();
    }

    private String text(String field) {
        return window.ui().field(field).getText();
    }

    private void click(String button) {
        JRootPane whole = window.lay(1366, 768);
        new Ui(whole).button(button).doClick();
        window.awaitIdle();
    }

    private void undo() {
        press(Keys.menu(KeyEvent.VK_Z));
        window.awaitIdle();
    }

    private void press(javax.swing.KeyStroke key) {
        Ui.press(Objects.requireNonNull(window.shown()).component(), key);
    }

    private String said() {
        List<String> said = new ArrayList<>();
        Stage.walk(window.lay(1366, 768), component -> {
            if (component instanceof StatusStrip strip) {
                said.add(strip.sentence());
            }
        });
        return said.get(0);
    }
}
