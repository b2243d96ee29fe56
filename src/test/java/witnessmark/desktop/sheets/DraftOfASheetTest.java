package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.Incident;
import witnessmark.domain.Severity;
import witnessmark.ledger.Story;
import witnessmark.logbook.sheets.OwnLogbook;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.sheets.WriteAction;
import witnessmark.wording.Texts;

/** What is said of a draft is true of what is on the sheet. */
@UiTest
class DraftOfASheetTest {
    @TempDir
    Path folder;

    @Test
    void a_sheet_emptied_by_hand_has_none_and_says_nothing_of_one() {
        try (SheetsWindow window = new SheetsWindow(folder, Looks.light(), Texts.in(Locale.UK))) {
            window.open("add_car");
            Ui.type(window.ui().field("Note"), "spare shell");
            window.awaitIdle();
            assertThat(said(window)).startsWith("Draft kept");
            window.ui().field("Note").setText("");
            window.awaitIdle();
            assertThat(said(window)).isBlank();
            assertThat(window.own.desk.logbook().drafts().begun()).isEmpty();
        }
    }

    /** The engine of the incident comes with it; nobody typed anything. */
    @Test
    void a_sheet_opened_about_something_has_none_before_somebody_types() {
        try (SheetsWindow window = new SheetsWindow(folder, Looks.light(), Texts.in(Locale.UK))) {
            OwnLogbook own = window.own;
            own.write(new EngineDesign("Four", 4, "in-line four", null, null, null, null, null, null, null, "", null));
            own.write(new Engine("A1", own.the(EngineDesign.class, "Four").id(), null, ""));
            Incident broke = new Incident(
                    "INC-01",
                    "water in the oil",
                    Story.at("2026-03-07T18:00Z[UTC]"),
                    FoundWhen.AT_A_CHECK,
                    null,
                    null,
                    null,
                    own.the(Engine.class, "A1").id(),
                    Severity.LOST_TIME,
                    "",
                    null,
                    "",
                    null,
                    "",
                    "",
                    "");
            own.write(broke);
            String incident = own.the(Incident.class, "INC-01").id().text();
            window.sheets.open(new Prefilled("action", Map.of(WriteAction.INCIDENT, incident)));
            window.awaitIdle();
            window.lay(1366, 768);
            window.awaitIdle();
            assertThat(own.desk.logbook().drafts().begun()).isEmpty();
            Ui.type(window.ui().field("What is done"), "new gasket");
            window.awaitIdle();
            assertThat(window.own.desk.logbook().drafts().begun()).hasSize(1);
        }
    }

    private static String said(SheetsWindow window) {
        JComponent page = (JComponent) SwingUtilities.getAncestorOfClass(
                SheetPage.Page.class, window.ui().field("Note"));
        StringBuilder said = new StringBuilder();
        Stage.walk(page, component -> {
            if (component instanceof JLabel label
                    && SwingUtilities.getAncestorOfClass(FormFoot.class, label) != null
                    && label.getText() != null
                    && label.getText().startsWith("Draft")) {
                said.append(label.getText());
            }
        });
        return said.toString();
    }
}
