package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Concession;
import witnessmark.domain.Fact;
import witnessmark.domain.Joint;
import witnessmark.domain.Notice;
import witnessmark.domain.Part;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.domain.StockMove;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.sheets.AddCar;
import witnessmark.logbook.sheets.AddEngine;
import witnessmark.logbook.sheets.FitPart;
import witnessmark.logbook.sheets.ListPart;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.sheets.TakeOffPart;
import witnessmark.logbook.shelf.SeeShelf;
import witnessmark.wording.Texts;

/** Parts put aside, sent out, taken from the shelf and tightened, as people type them in the window. */
@UiTest
class ShelfByKeysTest {
    @TempDir
    Path folder;

    @Test
    void a_part_goes_into_quarantine_and_is_scrapped_with_the_decision() {
        try (SheetsWindow window = open()) {
            window.open("put_aside");
            choose(window, "Part", "GK-1");
            type(window, "What was seen, or is doubted", "fire ring marked");
            save(window);
            assertThat(only(window, Quarantine.class).by()).isEqualTo("Ada");
            window.open("decide_aside");
            choose(window, "Decided", "SCRAP_IT");
            type(window, "What was decided, and why", "no second use");
            type(window, "At", "25:99");
            save(window);
            assertThat(window.shown()).as("what keeps it from being saved").isNotNull();
            type(window, "At", "");
            save(window);
            assertThat(window.shown()).isNull();
            assertThat(only(window, Scrapping.class).why()).isEqualTo("no second use");
        }
    }

    @Test
    void a_sheet_opened_about_a_part_has_it_filled_in_and_goes_back_where_it_came_from() {
        try (SheetsWindow window = open()) {
            List<String> went = new ArrayList<>();
            Where gasket = SeeShelf.of(window.own.desk.view()).parts().stream()
                    .filter(part -> part.mark().equals("GK-1"))
                    .findFirst()
                    .orElseThrow()
                    .where();
            Prefilled aside = Prefilled.about(gasket, false).stream()
                    .filter(sheet -> sheet.sheet().equals("put_aside"))
                    .findFirst()
                    .orElseThrow();
            window.sheets.open(aside, () -> went.add("back"));
            window.awaitIdle();
            window.lay(1366, 768);
            type(window, "What was seen, or is doubted", "fire ring marked");
            save(window);
            assertThat(window.shown()).isNull();
            assertThat(went).containsExactly("back");
            Quarantine written = only(window, Quarantine.class);
            assertThat(written.part()).isEqualTo(gasket.part().id());
            window.open("put_aside");
            assertThat(window.ui().choice("Part").getSelectedIndex())
                    .as("nothing is chosen on the next")
                    .isNegative();
        }
    }

    @Test
    void what_is_sent_out_is_chased_and_comes_back() {
        try (SheetsWindow window = open()) {
            window.open("send_out");
            choose(window, "What", "GK-1");
            type(window, "To whom", "Tarn Machine");
            type(window, "What is to be done", "coat it");
            type(window, "Sent or ordered on", "5 Mar");
            save(window);
            window.open("chase");
            type(window, "What was answered", "next week");
            save(window);
            window.open("came_back");
            type(window, "What came of it", "coated");
            save(window);
            assertThat(only(window, SentOut.class).back())
                    .as("nobody said yet whether it may be fitted again")
                    .isNull();
            choose(window, "May it be fitted again", "yes");
            save(window);
            assertThat(only(window, SentOut.class).result()).isEqualTo("coated");
        }
    }

    @Test
    void a_gasket_that_is_not_listed_is_fitted_from_the_shelf_once_it_is_accepted_as_it_is() {
        try (SheetsWindow window = open()) {
            window.open("new_stock");
            choose(window, "Part design", "Tessel gasket");
            type(window, "Batch", "T-77");
            type(window, "How many", "3");
            type(window, "On", "5 Mar");
            save(window);
            window.own
                    .save(
                            new ListPart(),
                            "listed_for",
                            "Quarrow 2.0",
                            "position",
                            "head gasket",
                            "part_design",
                            "new_design",
                            "part_design_name",
                            "Marl gasket",
                            "listed_from",
                            "1 Mar")
                    .orThrow();
            window.open("fit_part");
            choose(window, "Engine or car", "H1");
            choose(window, "Position", "head gasket");
            choose(window, "Part", "T-77");
            window.lay(1366, 768);
            save(window);
            assertThat(window.shown()).as("asks why it is accepted").isNotNull();
            Pictures.write("sheet-fit_part-not-listed", window.lay(1366, 768));
            type(window, "Why it is accepted as it is", "the listed one is out of stock");
            save(window);
            assertThat(window.shown()).isNull();
            assertThat(only(window, Concession.class).what()).isEqualTo("Marl gasket \u2192 Tessel gasket");
            assertThat(window.own.the(Part.class, "T-77-1").fact().batch()).isEqualTo("T-77");
            assertThat(window.own.desk.view().facts().of(StockMove.class).where(move -> move.change() < 0))
                    .hasSize(1);
        }
    }

    @Test
    void a_joint_goes_on_to_its_next_stage_with_value_and_stage_alone() {
        try (SheetsWindow window = open()) {
            window.open("add_tool");
            type(window, "Mark", "W3");
            save(window);
            window.open("tighten");
            choose(window, "Engine", "H1");
            choose(window, "Fasteners", "ROD_BOLTS");
            for (String stage : List.of("1", "2")) {
                type(window, "Stage", stage);
                type(window, "To what", "40 N m");
                save(window);
            }
            assertThat(window.own.desk.view().facts().of(Joint.class).where(joint -> true))
                    .extracting(joint -> joint.fact().stage())
                    .containsExactly("1", "2");
        }
    }

    @Test
    void a_notice_shows_what_is_meant_and_where_it_is_before_it_is_saved() {
        try (SheetsWindow window = open()) {
            window.open("write_notice");
            type(window, "Number or title", "N-1");
            type(window, "Dated", "4 Mar");
            type(window, "What is to be done", "look at the fire ring");
            choose(window, "Part design", "Tessel gasket");
            window.lay(1366, 768);
            assertThat(Stage.visible(Objects.requireNonNull(window.shown()).component()).stream()
                            .filter(JTextArea.class::isInstance)
                            .map(area -> ((JTextArea) area).getText()))
                    .contains("1 part is meant\nGK-1: spare");
            save(window);
            assertThat(only(window, Notice.class).number()).isEqualTo("N-1");
        }
    }

    private SheetsWindow open() {
        SheetsWindow window = new SheetsWindow(folder, Looks.look(Theme.LIGHT, 1.0f), Texts.in(Locale.UK));
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
                        "hours_how",
                        "part_new",
                        "car",
                        "7",
                        "since",
                        "1 Mar")
                .orThrow();
        window.own
                .save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        "head gasket",
                        "since",
                        "2 Mar",
                        "mark",
                        "GK-1",
                        "part_design_name",
                        "Tessel gasket")
                .orThrow();
        window.own
                .save(new TakeOffPart(), "place", "H1", "fitted", "GK-1", "off_when", "4 Mar", "off_reason", "look")
                .orThrow();
        return window;
    }

    private static void type(SheetsWindow window, String label, String text) {
        window.lay(1366, 768);
        window.ui().field(label).setText("");
        Ui.type(window.ui().field(label), text);
    }

    private static void choose(SheetsWindow window, String label, String words) {
        window.lay(1366, 768);
        JComboBox<?> box = window.ui().choice(label);
        for (int i = 0; i < box.getItemCount(); i++) {
            if (String.valueOf(box.getItemAt(i)).contains(words)) {
                box.setSelectedIndex(i);
                return;
            }
        }
        throw new AssertionError("no " + words + " under " + label);
    }

    private static void save(SheetsWindow window) {
        Ui.press(Objects.requireNonNull(window.shown()).component(), Keys.menu(KeyEvent.VK_ENTER));
        window.awaitIdle();
        window.lay(1366, 768);
    }

    private static <F extends Fact> F only(SheetsWindow window, Class<F> kind) {
        return window.own.only(kind);
    }
}
