package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JComboBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.sheets.AddCar;
import witnessmark.logbook.sheets.AddEngine;
import witnessmark.logbook.sheets.SetLimit;
import witnessmark.wording.Texts;

/** The sheet on which something is signed to go on past its limit. */
@UiTest
class RunOnInTheWindowTest {
    @TempDir
    Path folder;

    @Test
    void letters_of_a_rule_book_limit_not_yet_due_are_answered_with_that_limit_and_its_source() {
        try (SheetsWindow window = new SheetsWindow(folder, Looks.light(), Texts.in(Locale.UK))) {
            String[] engine = {"number", "H1", "design_name", "Quarrow 2.0", "cylinders", "4", "hours", "9.5"};
            window.own.save(new AddCar(), "name", "7").orThrow();
            window.own.save(new AddEngine(), engine).orThrow();
            window.own
                    .save(
                            new SetLimit(),
                            "scope",
                            "whole_engine",
                            "limit_engine",
                            "H1",
                            "action",
                            "rebuild",
                            "work_due",
                            "rebuild",
                            "figure",
                            "60",
                            "rank",
                            "rule book",
                            "source",
                            "Article 7.3")
                    .orThrow();
            window.open("sign_run_on");
            JComboBox<?> limit = window.ui().choice("Limit");
            limit.selectWithKeyChar('r');
            limit.selectWithKeyChar('e');
            window.awaitIdle();

            assertThat(limit.getAccessibleContext().getAccessibleDescription())
                    .isEqualTo("'rebuild' on H1 is a limit of the rule book (Article 7.3): it cannot be run on, whether"
                            + " it is due yet or not");
            assertThat(LayoutRules.broken(window.lay(1366, 768))).isEmpty();
            Pictures.write("sheet-sign_run_on-rule-book", window.lay(1366, 768));
        }
    }
}
