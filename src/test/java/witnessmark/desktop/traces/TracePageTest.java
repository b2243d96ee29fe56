package witnessmark.desktop.traces;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Run;
import witnessmark.quantity.Counter;
import witnessmark.trace.LoggerFiles;
import witnessmark.wording.Texts;

/** The page on which a trace is brought in: as text, by rules of layout, to screen readers, in pictures, and at work. */
@UiTest
class TracePageTest {
    private static final String RACE = "2026-05-03_41_race1.csv";

    @TempDir
    Path folder;

    private @Nullable TraceWindow shown;

    @AfterEach
    void close() {
        TraceWindow window = shown;
        if (window != null) {
            window.close();
        }
    }

    private TraceWindow window() throws IOException {
        return window(Theme.LIGHT, 1.0f, Texts.in(Locale.UK));
    }

    private TraceWindow window(Theme theme, float zoom, Texts texts) throws IOException {
        shown = new TraceWindow(folder, Looks.look(theme, zoom), texts);
        return shown;
    }

    private static String withoutTime() {
        StringBuilder text = new StringBuilder();
        LoggerFiles.spike()
                .lines()
                .forEach(line ->
                        text.append(line.substring(line.indexOf(',') + 1)).append('\n'));
        return text.toString();
    }

    // How it looks

    @Test
    void a_trace_whose_run_is_sure_reads_as_text() throws IOException {
        TraceWindow window = window();
        window.open(RACE, LoggerFiles.mechanicalOverRev());
        window.laidOut(1366, 768);
        GoldenText.check("trace_of_a_run", window.page.panel());
        window.page.panel().showRead();
        window.laidOut(1366, 768);
        GoldenText.check("trace_how_it_was_read", window.page.panel());
    }

    @Test
    void what_is_asked_and_what_is_refused_reads_as_text() throws IOException {
        TraceWindow window = window();
        window.open("2026-05-23_57_p1.csv", withoutTime());
        window.laidOut(1366, 768);
        GoldenText.check("trace_asked", window.page.panel());
        window.open("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        window.laidOut(1366, 768);
        assertThat(GoldenText.of(window.page.panel())).doesNotContain("nothing is wrong");
        GoldenText.check("trace_refused", window.page.panel());
    }

    static Stream<Arguments> sizes() {
        return Stream.of(
                Arguments.of(1366, 768, 1.0f),
                Arguments.of(1366, 768, 1.5f),
                Arguments.of(1100, 700, 1.0f),
                Arguments.of(1100, 700, 1.5f));
    }

    @ParameterizedTest(name = "{0} x {1} at {2}")
    @MethodSource("sizes")
    void nothing_is_cut_or_overlaps(int width, int height, float zoom) throws IOException {
        TraceWindow window = window(Theme.LIGHT, zoom, Texts.in(Locale.UK));
        window.page.open();
        window.laidOut(width, height);
        assertThat(LayoutRules.broken(window.page.panel())).isEmpty();
        window.open("2026-05-23_57_p1.csv", withoutTime());
        window.laidOut(width, height);
        assertThat(LayoutRules.broken(window.page.panel())).isEmpty();
        window.open(RACE, LoggerFiles.mechanicalOverRev());
        window.laidOut(width, height);
        assertThat(LayoutRules.broken(window.page.panel())).isEmpty();
        window.page.panel().showRead();
        window.laidOut(width, height);
        assertThat(LayoutRules.broken(window.page.panel())).isEmpty();
        window.open("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        window.laidOut(width, height);
        assertThat(LayoutRules.broken(window.page.panel())).isEmpty();
    }

    @Test
    void in_a_longer_language_nothing_overlaps() throws IOException {
        TraceWindow window = window(Theme.LIGHT, 1.0f, Texts.pseudo());
        window.open(RACE, LoggerFiles.mechanicalOverRev());
        window.laidOut(1366, 768);
        assertThat(LayoutRules.broken(window.page.panel()))
                .filteredOn(fault -> fault.contains("overlaps"))
                .isEmpty();
    }

    @Test
    void everything_that_takes_the_focus_has_a_name_of_its_own() throws IOException {
        TraceWindow window = window();
        window.open("2026-05-23_57_p1.csv", withoutTime());
        window.laidOut(1366, 768);
        assertThat(AccessibleWalk.faults(window.page.panel())).isEmpty();
        window.open(RACE, LoggerFiles.mechanicalOverRev());
        window.laidOut(1366, 768);
        assertThat(AccessibleWalk.faults(window.page.panel())).isEmpty();
        window.page.panel().showRead();
        window.laidOut(1366, 768);
        assertThat(AccessibleWalk.faults(window.page.panel())).isEmpty();
    }

    @Test
    void no_letter_is_claimed_twice_nor_is_one_of_the_menus() throws IOException {
        TraceWindow window = window();
        window.open("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        for (int tab = 0; tab < 2; tab++) {
            window.page.panel().tabs().setSelectedIndex(tab);
            window.laidOut(1366, 768);
            List<Integer> letters = new java.util.ArrayList<>();
            "LEGRVH".chars().forEach(letters::add);
            Stage.walk(window.page.panel(), component -> {
                if (component instanceof AbstractButton button && button.isShowing() && button.getMnemonic() != 0) {
                    letters.add(button.getMnemonic());
                } else if (component instanceof JLabel label && label.getDisplayedMnemonic() != 0) {
                    letters.add(label.getDisplayedMnemonic());
                }
            });
            assertThat(letters).doesNotHaveDuplicates();
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"LIGHT", "DARK"})
    void every_word_can_be_told_from_what_it_stands_on(Theme theme) throws IOException {
        TraceWindow window = window(theme, 1.0f, Texts.in(Locale.UK));
        window.open("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        window.laidOut(1366, 768);
        assertThat(Contrast.tooLow(window.page.panel())).isEmpty();
        window.open("2026-05-23_57_p1.csv", withoutTime());
        window.laidOut(1366, 768);
        assertThat(Contrast.tooLow(window.page.panel())).isEmpty();
    }

    @Test
    void a_page_made_before_the_theme_was_changed_comes_up_in_the_one_of_now() throws IOException {
        TraceWindow window = window();
        Looks.look(Theme.DARK, 1.0f);
        SwingUtilities.updateComponentTreeUI(window.pane); // as the look does with all that is in a window
        window.open("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        window.laidOut(1366, 768);
        assertThat(Contrast.tooLow(window.page.panel())).isEmpty();
    }

    static Stream<Arguments> pictures() {
        return Stream.of(Theme.LIGHT, Theme.DARK)
                .flatMap(theme -> Stream.of(1.0f, 1.5f).map(zoom -> Arguments.of(theme, zoom)));
    }

    @ParameterizedTest(name = "{0} at {1}")
    @MethodSource("pictures")
    void pictures_for_people(Theme theme, float zoom) throws IOException {
        TraceWindow window = window(theme, zoom, Texts.in(Locale.UK));
        String end = theme.name().toLowerCase(Locale.ROOT) + "_" + Math.round(zoom * 100);
        window.page.open();
        Pictures.write("trace_none_" + end, window.laidOut(1366, 768));
        window.open("2026-05-23_57_p1.csv", withoutTime());
        Pictures.write("trace_asked_" + end, window.laidOut(1366, 768));
        window.open("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        Pictures.write("trace_refused_" + end, window.laidOut(1366, 768));
        window.open(RACE, LoggerFiles.mechanicalOverRev());
        assertThat(Pictures.colours(Pictures.write("trace_" + end, window.laidOut(1366, 768)), 50))
                .isEqualTo(50);
        window.page.panel().showRead();
        Pictures.write("trace_read_" + end, window.laidOut(1366, 768));
        window.page.panel().saveButton().doClick();
        Pictures.write("trace_brought_in_" + end, window.laidOut(1366, 768));
    }

    // At work

    @Test
    void saving_shows_the_run_with_its_trace_and_undo_takes_both_back() throws IOException {
        TraceWindow window = window();
        window.open(RACE, LoggerFiles.mechanicalOverRev());
        var id = window.page.model().run().orElseThrow().run().id();
        Run before = window.run(id);
        window.page.panel().saveButton().doClick();
        window.tasks.awaitIdle();

        assertThat(window.run(id).knownBy().of(Counter.RUNNING)).isEqualTo(HowKnown.TRACE);
        assertThat(window.traces()).hasSize(1);
        assertThat(heading(window)).contains("Race 1");
        assertThat(GoldenText.of(window.laidOut(1366, 768))).contains("Trace " + RACE + ": ran", "Brought in " + RACE);

        window.book.undo().orThrow();
        window.window.changed();
        window.tasks.awaitIdle();
        assertThat(window.run(id)).isEqualTo(before);
        assertThat(window.traces()).isEmpty();
        assertThat(GoldenText.of(window.laidOut(1366, 768))).contains("No trace of this run.");
    }

    @Test
    void what_was_answered_and_ticked_is_there_again_after_another_place_and_another_file() throws IOException {
        TraceWindow window = window();
        window.open("2026-05-23_57_p1.csv", withoutTime());
        TraceModel first = window.page.model();
        first.answer(first.asked().get(0), 20.0);
        window.page.open(folder.resolve("files").resolve("2026-05-23_57_p1.csv"));
        window.tasks.awaitIdle();
        assertThat(first.isRead()).isTrue();

        window.open(RACE, LoggerFiles.mechanicalOverRev());
        window.page.forRun().tick(witnessmark.logbook.tracing.TraceField.WATER).doClick();
        window.runSheet.again();
        window.tasks.awaitIdle();
        assertThat(SwingUtilities.isDescendingFrom(window.page.panel(), window.pane))
                .isFalse();
        window.page.open();
        window.tasks.awaitIdle();
        assertThat(window.page.model().file()).isEqualTo(RACE);
        assertThat(window.page.model().taken()).doesNotContain(witnessmark.logbook.tracing.TraceField.WATER);
        window.page.open(folder.resolve("files").resolve("2026-05-23_57_p1.csv"));
        window.tasks.awaitIdle();
        assertThat(window.page.model()).isSameAs(first);
        assertThat(first.isRead()).isTrue();
    }

    @Test
    void a_file_that_was_brought_in_before_says_when_and_for_which_run_and_leads_there() throws IOException {
        TraceWindow window = window();
        window.open(RACE, LoggerFiles.mechanicalOverRev());
        window.page.panel().saveButton().doClick();
        window.tasks.awaitIdle();
        window.runSheet.again();
        window.open("copy of it.csv", LoggerFiles.mechanicalOverRev());
        Pictures.write("trace_before_light_100", window.laidOut(1366, 768));

        Ui ui = new Ui(window.page.panel());
        String said = GoldenText.of(window.page.panel());
        assertThat(said)
                .containsPattern("Brought in on .* by .*, for Race 1, .*3 May.*, car 41, K03\\.")
                .doesNotContain("It has a trace already", "Of which run", "Keep its samples");
        assertThat(window.page.panel().logButton().isEnabled()).isFalse();
        assertThat(window.page.panel().saveButton().isEnabled()).isFalse();
        assertThat(window.page.firstFocus()).isSameAs(ui.button("Show that run"));
        assertThat(AccessibleWalk.faults(window.page.panel())).isEmpty();
        assertThat(Contrast.tooLow(window.page.panel())).isEmpty();
        window.laidOut(1100, 700);
        assertThat(LayoutRules.broken(window.page.panel())).isEmpty();
        ui.button("Show that run").doClick();
        window.tasks.awaitIdle();
        assertThat(heading(window)).contains("Race 1");

        window.book.undo().orThrow();
        window.window.changed();
        window.page.open();
        window.tasks.awaitIdle();
        window.page.changed();
        window.tasks.awaitIdle();
        assertThat(window.page.panel().logButton().isEnabled())
                .as("it was taken back")
                .isTrue();
    }

    @Test
    void a_run_nobody_logged_goes_through_the_run_sheet_and_both_are_one_change() throws IOException {
        TraceWindow window = window();
        window.open("2026-07-08_41_test.csv", LoggerFiles.undated());
        int runs = window.book.view().facts().of(Run.class).inForce().toList().size();
        assertThat(window.page.panel().saveButton().isEnabled()).isFalse();
        String laps = String.valueOf(
                window.page.model().trace().orElseThrow().parts().get(0).laps());
        window.page.panel().logButton().doClick();
        window.tasks.awaitIdle();
        String sheet = GoldenText.of(window.laidOut(1366, 768));
        assertThat(sheet).contains("Filled from the trace 2026-07-08_41_test.csv", "28");
        assertThat(witnessmark.desktop.runsheet.RunSheetHand.text(
                        window.runSheet, witnessmark.logbook.run.RunField.LAPS))
                .as("laps, of which the file marks so many")
                .isEqualTo(laps);
        assertThat(sheet).contains("combo box How timed: Trace");

        assertThat(window.traces()).isEmpty();
        witnessmark.desktop.runsheet.RunSheetHand.save(window.runSheet);
        window.tasks.awaitIdle();
        assertThat(window.traces()).as(GoldenText.of(window.laidOut(1366, 768))).hasSize(1);
        Run written = window.run(window.traces().get(0).fact().run());
        assertThat(written.knownBy().of(Counter.RUNNING)).isEqualTo(HowKnown.TRACE);
        assertThat(written.start().day()).hasToString("2026-07-08");
        assertThat(window.page.model()).as("it is in hand no more").isNull();

        window.book.undo().orThrow();
        assertThat(window.traces()).isEmpty();
        assertThat(window.book.view().facts().of(Run.class).inForce().toList()).hasSize(runs);
    }

    @Test
    void a_run_that_is_begun_on_the_sheet_is_not_typed_over() throws IOException {
        TraceWindow window = window();
        witnessmark.desktop.runsheet.RunSheetHand.type(window.runSheet, witnessmark.logbook.run.RunField.LAPS, "7");
        window.open("2026-07-08_41_test.csv", LoggerFiles.undated());
        window.page.panel().logButton().doClick();
        window.tasks.awaitIdle();

        assertThat(window.page.panel().said()).contains("Save or clear it first");
        assertThat(window.page.model()).isNotNull();
        assertThat(witnessmark.desktop.runsheet.RunSheetHand.text(
                        window.runSheet, witnessmark.logbook.run.RunField.LAPS))
                .isEqualTo("7");
    }

    @Test
    void a_file_that_cannot_be_read_is_said_and_the_next_one_can_be_opened() throws IOException {
        TraceWindow window = window();
        window.open("letter.txt", "Dear team\n");
        assertThat(window.page.panel().said()).contains("No row of figures was found.");
        window.open(RACE, LoggerFiles.mechanicalOverRev());
        assertThat(window.page.model().isRead()).isTrue();
        assertThat(window.page.panel().said()).isEmpty();
    }

    @Test
    void reading_is_called_off_and_leaves_nothing() throws IOException {
        TraceWindow window = window();
        Path file = window.file(RACE, LoggerFiles.mechanicalOverRev());
        window.page.open(file);
        window.page.panel().stopButton().doClick();
        window.tasks.awaitIdle();

        assertThat(window.page.panel().said()).contains("Reading was stopped");
        assertThat(window.page.model().isRead()).isFalse();
        assertThat(window.traces()).isEmpty();
        window.page.open(file);
        window.tasks.awaitIdle();
        assertThat(window.page.model().isRead()).isTrue();
    }

    @Test
    void several_files_that_are_dropped_come_one_after_another() throws IOException {
        TraceWindow window = window();
        Path first = window.file(RACE, LoggerFiles.mechanicalOverRev());
        Path next = window.file("2026-05-24_41_race1.csv", LoggerFiles.steam());
        window.page.open(List.of(first, next));
        window.tasks.awaitIdle();
        assertThat(window.page.model().file()).isEqualTo(RACE);
        window.page.panel().saveButton().doClick();
        window.tasks.awaitIdle();
        assertThat(window.page.model().file()).isEqualTo("2026-05-24_41_race1.csv");
        window.page.panel().saveButton().doClick();
        window.tasks.awaitIdle();
        assertThat(window.traces()).hasSize(2);
        assertThat(heading(window)).contains("Race 1");
    }

    @Test
    void the_folder_that_is_watched_says_what_waits_until_it_is_brought_in_or_set_aside() throws IOException {
        TraceWindow window = window();
        Path stick = Files.createDirectories(folder.resolve("stick"));
        Files.writeString(stick.resolve(RACE), LoggerFiles.mechanicalOverRev());
        Files.writeString(stick.resolve("letter.txt"), "Dear team\n");
        Files.writeString(stick.resolve("2026-05-24_99_race1.csv"), LoggerFiles.steam());
        window.watch.watch(stick);
        window.tasks.awaitIdle();
        assertThat(window.watch.waiting())
                .as("not before they lay there for a while")
                .isEmpty();
        awaitWaiting(window, 2);
        window.runSheet.dismiss();
        window.tasks.awaitIdle();
        assertThat(GoldenText.of(window.laidOut(1366, 768))).contains("2 traces wait to be brought in: 2026-05-03");

        window.page.openWaiting();
        window.tasks.awaitIdle();
        assertThat(window.page.model().file()).isEqualTo(RACE);
        window.page.panel().saveButton().doClick();
        window.tasks.awaitIdle();
        assertThat(window.page.model().file()).as("the next comes up").isEqualTo("2026-05-24_99_race1.csv");
        window.page.panel().asideButton().doClick();
        window.tasks.awaitIdle();
        awaitWaiting(window, 0);
        assertThat(window.page.model()).isNull();
        assertThat(Files.exists(stick.resolve("2026-05-24_99_race1.csv"))).isTrue();
        window.page.open();
        assertThat(GoldenText.of(window.laidOut(1366, 768)))
                .contains(RACE + " does not wait: it was brought in for Race 1, Sun 3 May")
                .contains("letter.txt does not wait: No row of figures was found.")
                .contains("2026-05-24_99_race1.csv does not wait: it was set aside.");
        Pictures.write("trace_passed_light_100", window.laidOut(1366, 768));
    }

    private static String heading(TraceWindow window) {
        return witnessmark.desktop.runsheet.RunSheetHand.heading(window.runSheet);
    }

    /** Files are whole once they did not change for some seconds of the clock. */
    private static void awaitWaiting(TraceWindow window, int count) {
        long end = System.nanoTime() + 30_000_000_000L;
        while (window.watch.waiting().size() != count && System.nanoTime() < end) {
            window.watch.look();
            window.tasks.awaitIdle();
        }
        assertThat(window.watch.waiting()).hasSize(count);
    }
}
