package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.BankLine;
import witnessmark.domain.BankMatch;
import witnessmark.domain.Entry;
import witnessmark.domain.StatementForm;

/** A bank's file is shown before anything of it is taken, and its lines are matched one by one or all at once. */
@UiTest
class BankPagesTest {
    private static final String STATEMENT = "Date;Details;Amount\n"
            + "25.6.2026;OIL SYSTEM SUPPLIER O1 cooler and lines;-310,00\n"
            + "2.7.2026;MAIN SPONSOR second half;9.000,00\n"
            + "30.6.2026;account fee;-9,90\n"
            + "31.6.2026;no such day;-1,00\n"
            + "13.5.2026;MACHINIST G1 seats lapped;-180,00\n".repeat(1)
            + "14.5.2026;fuel station;-61,20\n";

    @TempDir
    Path folder;

    @Test
    void what_a_statement_holds_and_how_it_was_read_is_shown_and_nothing_is_written_yet() {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            read(window, folder);
            assertThat(window.said())
                    .contains(
                            "Days stand under Date: ", " is read as ", "5 new lines", "1 row cannot be read", "Line 5");
            assertThat(lines(window)).isEmpty();
            GoldenText.check("bank_statement", Stage.lay(window.start.place().component(), 1140, 640));
            window.press("Leave it");
            assertThat(lines(window)).isEmpty();
        }
    }

    @Test
    void taken_in_its_lines_are_matched_with_what_they_pay_and_the_rest_is_listed() {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            read(window, folder);
            window.ui().field("Account").setText("card");
            window.press("Take in what is good");
            assertThat(lines(window)).hasSize(5).allMatch(line -> line.account().equals("card"));
            assertThat(window.logbook.logbook().facts().of(StatementForm.class).size())
                    .isEqualTo(1);
            assertThat(window.said()).contains("5 lines of statements are matched with nothing", "oil cooler, lines");
            GoldenText.check("bank_match", Stage.lay(window.start.place().component(), 1140, 640));

            window.press("Match all proposed");
            assertThat(window.logbook.logbook().facts().of(BankMatch.class).inForce())
                    .hasSize(3);
            assertThat(window.said()).contains("2 lines of statements are matched with nothing", "3 lines matched.");
        }
    }

    /** Each letter reads the rows anew; what is taken is of the account that stands there when Enter is pressed. */
    @Test
    void enter_right_after_the_account_was_typed_takes_its_lines_for_that_account() {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            read(window, folder);
            JTextComponent account = window.ui().field("Account");
            account.setText("c");
            account.setText("card");
            Ui.press((JComponent) account, Keys.plain(KeyEvent.VK_ENTER));
            window.settle();
            assertThat(lines(window)).hasSize(5).allMatch(line -> line.account().equals("card"));
        }
    }

    @Test
    void one_line_is_matched_or_set_aside_with_a_reason_and_never_without() {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            read(window, folder);
            window.press("Take in what is good");
            select(window, "account fee");
            assertThat(window.ui().button("Match this line").isEnabled()).isFalse();
            window.press("Set aside");
            assertThat(window.said()).contains("Say why, so that it can be understood next year.");
            window.ui().field("Why it is no business of the team").setText("bank's own fee");
            window.press("Set aside");
            assertThat(lines(window).stream().filter(line -> !line.aside().isBlank()))
                    .singleElement()
                    .satisfies(line -> assertThat(line.aside()).isEqualTo("bank's own fee"));
            select(window, "MAIN SPONSOR second half");
            window.press("Match this line");
            assertThat(window.said()).contains("3 lines of statements are matched with nothing");
            assertThat(window.logbook.undo().didWork()).isTrue();
            assertThat(window.logbook.logbook().facts().of(BankMatch.class).inForce())
                    .isEmpty();
            window.desk.changed();
            window.settle();
            assertThat(window.said()).contains("4 lines of statements are matched with nothing");
        }
    }

    @Test
    void the_same_file_again_brings_nothing_and_a_file_that_is_no_table_is_refused() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            read(window, folder);
            window.press("Take in what is good");
            read(window, folder);
            assertThat(window.said()).contains("No new line; 5 are in the logbook already");
            assertThat(window.ui().button("Take in what is good").isEnabled()).isFalse();
            window.press("Leave it");
            window.answer = Files.writeString(folder.resolve("letter.txt"), "Dear Sir or Madam");
            window.perform("take");
            assertThat(window.said().toLowerCase(Locale.ROOT)).contains("letter.txt");
        }
    }

    static void read(StartedWindow window, Path folder) {
        try {
            window.answer = Files.writeString(folder.resolve("june.csv"), STATEMENT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        window.perform("take");
    }

    private static List<BankLine> lines(StartedWindow window) {
        return window.logbook
                .logbook()
                .facts()
                .of(BankLine.class)
                .inForce()
                .map(Entry::fact)
                .toList();
    }

    private static void select(StartedWindow window, String words) {
        JTable table = window.ui().table("Lines matched with nothing");
        for (int row = 0; row < table.getRowCount(); row++) {
            if (String.valueOf(table.getValueAt(row, 2)).contains(words)) {
                table.setRowSelectionInterval(row, row);
                return;
            }
        }
        throw new AssertionError("no line " + words);
    }
}
