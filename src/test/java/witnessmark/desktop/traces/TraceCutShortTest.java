package witnessmark.desktop.traces;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.tracing.TraceField;
import witnessmark.trace.LoggerFiles;
import witnessmark.trace.Packs;
import witnessmark.wording.Texts;

/** What the page says of a file that is not all there, or not what was packed. */
@UiTest
class TraceCutShortTest {
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
        return window(Theme.LIGHT);
    }

    private TraceWindow window(Theme theme) throws IOException {
        shown = new TraceWindow(folder, Looks.look(theme, 1.0f), Texts.in(Locale.UK));
        return shown;
    }

    @Test
    void a_text_cut_short_says_so_first_and_nothing_of_samples_a_second() throws IOException {
        TraceWindow window = window();
        String whole = LoggerFiles.mechanicalOverRev();
        int end = whole.indexOf('\n', whole.length() / 25);
        window.open(RACE, whole.substring(0, end - 20)); // in the midst of a row
        String said = GoldenText.of(window.laidOut(1366, 768));
        Pictures.write("trace_cut_light_100", window.laidOut(1366, 768));

        assertThat(said)
                .contains("The file ends too early: what could be read of it lasts 1 min")
                .contains("Copy it from the logger again.")
                .doesNotContain("samples a second or", "times as much", "nothing is wrong with the file");
        assertThat(window.page.panel().saveButton().isEnabled()).isFalse();
        assertThat(window.page.panel().said()).as("once, under its run").isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void a_packed_file_cut_short_is_shown_as_far_as_it_goes_and_says_so_in_plain_words(Theme theme) throws IOException {
        TraceWindow window = window(theme);
        byte[] bytes = Packs.gzip(LoggerFiles.mechanicalOverRev());
        openPacked(window, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        String shown = GoldenText.of(window.laidOut(1366, 768));
        Pictures.write("trace_packed_cut_" + theme.name().toLowerCase(Locale.ROOT), window.laidOut(1366, 768));

        assertThat(window.page.panel().said())
                .startsWith("The file ends too early: 49")
                .contains("rows of it could be read, which last 16 min 37 s. What came after is missing.")
                .contains("Copy it from the logger again.")
                .doesNotContain("ZLIB");
        assertThat(shown)
                .contains("In the file: file ends too early", "read up to 16:36.9; what came after is missing");
        assertThat(window.page.model().taken())
                .as("the run says more of all the others")
                .containsExactly(TraceField.START);
        assertThat(window.page.panel().saveButton().isEnabled()).isTrue();
        assertThat(LayoutRules.broken(window.page.panel())).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void a_packed_file_that_does_not_fit_its_checksum_says_so_and_leaves_every_tick_to_the_person(Theme theme)
            throws IOException {
        TraceWindow window = window(theme);
        byte[] bytes = Packs.gzip(LoggerFiles.mechanicalOverRev());
        bytes[bytes.length - 8] ^= 1;
        openPacked(window, bytes);
        String shown = GoldenText.of(window.laidOut(1366, 768));
        Pictures.write("trace_suspect_" + theme.name().toLowerCase(Locale.ROOT), window.laidOut(1366, 768));

        assertThat(window.page.panel().said())
                .contains("The checksum in the file does not fit", "take only what you believe");
        assertThat(shown).contains("In the file: wrong checksum", "any figure may be wrong; nothing is left out");
        assertThat(window.page.model().taken()).isEmpty();
        assertThat(window.page.panel().saveButton().isEnabled()).isTrue();
    }

    @Test
    void what_was_to_be_known_of_a_file_goes_with_it() throws IOException {
        TraceWindow window = window();
        byte[] bytes = Packs.gzip(LoggerFiles.mechanicalOverRev());
        openPacked(window, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        assertThat(window.page.panel().said()).isNotEmpty();
        window.page.changed();
        window.tasks.awaitIdle();
        assertThat(window.page.panel().said())
                .as("the logbook changed, the file did not")
                .isNotEmpty();
        window.open(RACE, LoggerFiles.mechanicalOverRev());
        assertThat(window.page.panel().said()).isEmpty();
    }

    private void openPacked(TraceWindow window, byte[] bytes) throws IOException {
        window.page.open(Files.write(folder.resolve("files").resolve(RACE + ".gz"), bytes));
        window.tasks.awaitIdle();
    }
}
