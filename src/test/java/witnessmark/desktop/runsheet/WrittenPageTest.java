package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.SampleBook;
import witnessmark.wording.Texts;

/** How the page of a written run looks: as text, by rules of layout, to screen readers, and in pictures for people. */
@UiTest
class WrittenPageTest {
    private static final LocalDate WEDNESDAY = SampleBook.OPENING;

    private RunSheetStage stage = new RunSheetStage(SampleBook.on(WEDNESDAY));

    @AfterEach
    void close() {
        stage.tasks.awaitIdle();
        stage.close();
    }

    private void again(Theme theme, float zoom) {
        stage.close();
        stage = new RunSheetStage(SampleBook.on(WEDNESDAY), theme, zoom);
    }

    /** Race 2 of car 41 with two figures put right, one of them doubtful. */
    private RunSheetStage corrected() {
        stage.open(stage.run("K03", "2026-07-05", "Race 2"));
        stage.correct(RunField.LAPS, "11");
        stage.correct(RunField.RUNNING, "26 min 30 s");
        stage.correct(RunField.WATER, "125");
        stage.correct(RunField.DATE, "4 Jul");
        stage.pick(RunField.EVENT, "none");
        return stage;
    }

    private RunSheetStage struckOut() {
        return stage.open(stage.book.view().facts().of(Run.class).all().stream()
                .filter(run -> run.standing() == Standing.STRUCK_OUT)
                .findFirst()
                .orElseThrow()
                .id());
    }

    @Test
    void the_run_as_it_is_written_reads_as_text() {
        stage.open(stage.run("K03", "2026-07-05", "Race 2")).laidOut(1366, 768);
        GoldenText.check("run_sheet_written", stage.place.writtenPanel());
    }

    @Test
    void the_corrected_run_reads_as_text() {
        corrected().laidOut(1366, 768);
        GoldenText.check("run_sheet_corrected", stage.place.writtenPanel());
    }

    @Test
    void the_run_struck_out_reads_as_text() {
        struckOut().laidOut(1366, 768);
        GoldenText.check("run_sheet_struck_out", stage.place.writtenPanel());
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
    void nothing_is_cut_or_overlaps(int width, int height, float zoom) {
        again(Theme.LIGHT, zoom);
        corrected().laidOut(width, height);
        assertThat(LayoutRules.broken(stage.place.writtenPanel())).isEmpty();

        stage.place.writtenPanel().askReason();
        stage.laidOut(width, height);
        assertThat(LayoutRules.broken(stage.place.writtenPanel())).isEmpty();

        stage.place.writtenPanel().historyButton().doClick();
        stage.laidOut(width, height);
        assertThat(LayoutRules.broken(stage.place.writtenPanel())).isEmpty();

        struckOut().laidOut(width, height);
        assertThat(LayoutRules.broken(stage.place.writtenPanel())).isEmpty();
    }

    @Test
    void in_a_longer_language_nothing_overlaps() {
        stage.close();
        stage = new RunSheetStage(SampleBook.on(WEDNESDAY), Texts.pseudo());
        stage.open(stage.run("K03", "2026-07-05", "Race 2")).laidOut(1366, 768);
        assertThat(LayoutRules.broken(stage.place.writtenPanel()))
                .filteredOn(fault -> fault.contains("overlaps"))
                .isEmpty();
    }

    @Test
    void why_it_is_corrected_is_reached_by_a_letter_that_nothing_else_there_has() {
        corrected();
        assertThat(stage.place.writtenPanel().why().label().getDisplayedMnemonic())
                .isEqualTo('C');
        Stage.walk(stage.place.writtenPanel(), component -> {
            if (component instanceof AbstractButton button && button.isVisible()) {
                assertThat(button.getMnemonic()).as(button.getText()).isNotEqualTo('C');
            }
        });
    }

    @Test
    void everything_that_takes_the_focus_has_a_name_of_its_own() {
        corrected().laidOut(1366, 768);
        assertThat(AccessibleWalk.faults(stage.place.writtenPanel())).isEmpty();
        stage.place.writtenPanel().askReason();
        assertThat(AccessibleWalk.faults(stage.place.writtenPanel())).isEmpty();
        struckOut().laidOut(1366, 768);
        assertThat(AccessibleWalk.faults(stage.place.writtenPanel())).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = {"LIGHT", "DARK"})
    void every_word_can_be_told_from_what_it_stands_on(Theme theme) {
        again(theme, 1.0f);
        corrected().laidOut(1366, 768);
        assertThat(Contrast.tooLow(stage.place.writtenPanel())).isEmpty();
    }

    @Test
    void a_field_says_in_full_what_was_written() {
        corrected();
        assertThat(stage.place
                        .writtenPanel()
                        .form()
                        .input(RunField.WATER)
                        .getAccessibleContext()
                        .getAccessibleDescription())
                .contains("125 °C")
                .endsWith("written down as 84");
    }

    static Stream<Arguments> pictures() {
        return Stream.of(Theme.LIGHT, Theme.DARK)
                .flatMap(theme -> Stream.of(1.0f, 1.5f).map(zoom -> Arguments.of(theme, zoom)));
    }

    @ParameterizedTest(name = "{0} at {1}")
    @MethodSource("pictures")
    void pictures_for_people(Theme theme, float zoom) {
        again(theme, zoom);
        String end = theme.name().toLowerCase(java.util.Locale.ROOT) + "_" + Math.round(zoom * 100);
        JRootPane window = corrected().laidOut(1366, 768);
        assertThat(Pictures.colours(Pictures.write("run_sheet_corrected_" + end, window), 50))
                .isEqualTo(50);

        stage.place.writtenPanel().askReason();
        Pictures.write("run_sheet_striking_out_" + end, stage.laidOut(1366, 768));
        stage.place.writtenPanel().historyButton().doClick();
        Pictures.write("run_sheet_history_" + end, stage.laidOut(1366, 768));
        Pictures.write("run_sheet_struck_out_" + end, struckOut().laidOut(1366, 768));
    }
}
