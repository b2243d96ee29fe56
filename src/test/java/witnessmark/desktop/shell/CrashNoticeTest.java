package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

@UiTest
class CrashNoticeTest {
    private final List<String> done = new ArrayList<>();
    private final Tasks tasks = new Tasks((thread, failure) -> done.add("failed"));

    @AfterEach
    void close() {
        tasks.close();
    }

    private JPanel notice(String lastSaved, int repeats) {
        CrashDialog dialog =
                new CrashDialog(Texts.in(Locale.UK), () -> tasks, () -> lastSaved, () -> "log", () -> done.add("quit"));
        JTextArea said = Lettering.paragraph("", Styles.NOTE);
        JPanel content = dialog.content(null, "report", said);
        dialog.tellRepeats(said, repeats);
        return Stage.lay(content, 480, 260);
    }

    @Test
    void it_says_what_happened_what_that_means_and_what_to_do() {
        JPanel notice = notice("10:58", 0);
        assertThat(GoldenText.of(notice))
                .contains("Something broke inside Witness Mark")
                .contains("The logbook is safe: last saved 10:58. You can go on, but restart soon.")
                .contains("Go on", "Save report", "Quit");
        assertThat(LayoutRules.broken(notice)).isEmpty();
    }

    @Test
    void repeats_are_counted_and_nothing_saved_is_not_called_saved() {
        assertThat(GoldenText.of(notice("", 3)))
                .contains("It happened 3 more times since.")
                .doesNotContain("last saved");
    }

    @Test
    void quit_quits() {
        new Ui(notice("", 0)).button("Quit").doClick(0);
        assertThat(done).containsExactly("quit");
    }

    /** A painter that breaks breaks with every picture, also with the one in which the notice is said. */
    @Test
    void what_breaks_two_hundred_times_is_told_in_one_notice_and_then_at_the_foot() {
        List<Integer> again = new ArrayList<>();
        CrashNotice[] notice = {null};
        notice[0] = new CrashNotice(
                () -> null,
                (parent, where, failure, repeats) -> {
                    for (int i = 0; i < 20; i++) {
                        notice[0].tell(where, broken()); // while it is open
                    }
                    done.add("told, " + repeats.getAsInt() + " more");
                },
                times -> {
                    again.add(times);
                    notice[0].tell("painting", broken());
                });
        for (int i = 0; i < 180; i++) {
            notice[0].tell("painting", broken());
            tasks.awaitIdle();
        }
        assertThat(done).containsExactly("told, 20 more");
        assertThat(again).containsExactly(1, 10, 100);
    }

    @Test
    void another_fault_is_told_too_and_no_more_than_three() {
        CrashNotice notice = new CrashNotice(
                () -> null, (parent, where, failure, repeats) -> done.add(failure.getMessage()), times -> {});
        notice.tell("a", new IllegalStateException("first"));
        tasks.awaitIdle();
        notice.tell("a", new IllegalArgumentException("second"));
        tasks.awaitIdle();
        notice.tell("a", new ArithmeticException("third"));
        tasks.awaitIdle();
        notice.tell("a", new ClassCastException("fourth"));
        tasks.awaitIdle();
        assertThat(done).containsExactly("first", "second", "third");
    }

    private static RuntimeException broken() {
        return new IllegalStateException("a picture that cannot be painted");
    }

    @Test
    void the_report_names_versions_and_where_it_broke() {
        String report = CrashReport.text("main", new IllegalStateException("strip has no limit"));
        assertThat(report)
                .contains("Witness Mark", "java.version: " + System.getProperty("java.version"))
                .contains("screen: ")
                .contains("strip has no limit", "the_report_names_versions_and_where_it_broke");
    }
}
