package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.stream.Stream;
import javax.swing.JRootPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.told.ToldField;
import witnessmark.wording.Texts;

/** How the page looks: as text, by rules of layout, to screen readers, and in pictures for people. */
@UiTest
class RunSheetPageTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");

    private RunSheetStage stage = new RunSheetStage(SampleBook.on(SATURDAY));

    @AfterEach
    void close() {
        stage.tasks.awaitIdle();
        stage.close();
    }

    /** The sheet as an engineer has it half way through practice 1, with a slipped point. */
    private RunSheetStage filled() {
        stage.open();
        stage.pick(RunField.CAR, "41, engine K03");
        return values();
    }

    private RunSheetStage values() {
        stage.put(RunField.RUNNING, "28:20");
        stage.put(RunField.LAPS, "15");
        stage.put(RunField.HIGHEST, "8205");
        stage.put(RunField.WATER, "82");
        stage.put(RunField.OIL, "110");
        stage.put(RunField.OIL_PRESSURE, "45");
        stage.put(RunField.OIL_ADDED, "0.2");
        stage.put(RunField.LOADED, "20");
        stage.put(RunField.REMARKS, "Driver asked about the gears: no missed change. Plugs clean.");
        stage.tasks.awaitIdle();
        return stage;
    }

    /** The sheet with fields that cannot be read, after somebody pressed Save. */
    private RunSheetStage stopped() {
        stage.open();
        stage.put(RunField.RUNNING, "1h7x");
        stage.put(RunField.LAPS, "12abc");
        stage.model().ask();
        return stage;
    }

    private RunSheetStage told() {
        stage.open();
        stage.place.commands().get(1).perform();
        ToldModel told = stage.place.toldModel();
        told.type(
                ToldField.ENGINE,
                told.engines().stream()
                        .filter(engine -> engine.fact().number().equals("K21"))
                        .findFirst()
                        .orElseThrow()
                        .id()
                        .text());
        told.type(ToldField.FROM, "10 Jun");
        told.type(ToldField.TO, "1 Jul");
        told.type(ToldField.LIKELY, "3");
        told.type(ToldField.LOWEST, "2");
        told.type(ToldField.HIGHEST, "4");
        told.type(ToldField.TOLD_BY, "customer C1");
        told.type(ToldField.HOW, "his diary");
        stage.tasks.awaitIdle();
        return stage;
    }

    @Test
    void the_filled_sheet_reads_as_text() {
        filled().laidOut(1366, 768);
        GoldenText.check("run_sheet", stage.place.panel());
    }

    @Test
    void the_stopped_sheet_reads_as_text() {
        stopped().laidOut(1366, 768);
        GoldenText.check("run_sheet_stopped", stage.place.panel());
    }

    @Test
    void the_form_for_told_running_reads_as_text() {
        told().laidOut(1366, 768);
        GoldenText.check("run_sheet_told", stage.place.toldPanel());
    }

    static Stream<Arguments> sizes() {
        return Stream.of(
                Arguments.of(1366, 768, 1.0f),
                Arguments.of(1366, 768, 1.5f),
                Arguments.of(1366, 768, 2.0f),
                Arguments.of(1100, 700, 1.0f),
                Arguments.of(1100, 700, 1.5f));
    }

    @ParameterizedTest(name = "{0} x {1} at {2}")
    @MethodSource("sizes")
    void nothing_is_cut_or_overlaps(int width, int height, float zoom) {
        stage.close();
        stage = new RunSheetStage(SampleBook.on(SATURDAY), Theme.LIGHT, zoom);
        filled();
        stage.model().ask();
        assertThat(LayoutRules.broken(inside(width, height))).isEmpty();

        stage.model().type(RunField.RUNNING, "1h7x");
        stage.model().type(RunField.LAPS, "12abc");
        assertThat(LayoutRules.broken(inside(width, height))).isEmpty();
    }

    @ParameterizedTest(name = "{0} x {1} at {2}")
    @MethodSource("sizes")
    void nothing_of_told_running_is_cut_or_overlaps(int width, int height, float zoom) {
        stage.close();
        stage = new RunSheetStage(SampleBook.on(SATURDAY), Theme.LIGHT, zoom);
        told().laidOut(width, height);
        assertThat(LayoutRules.broken(stage.place.toldPanel())).isEmpty();
    }

    /** On the small laptop at twice the size: the foot scrolls with the fields, right under them, and comes back. */
    @Test
    void in_a_low_window_three_rows_of_fields_are_in_sight() {
        stage.close();
        stage = new RunSheetStage(SampleBook.on(SATURDAY), Theme.LIGHT, 2.0f);
        filled();
        var low = (RunSheetPanel) inside(1366, 768);
        assertThat(rowsInSight(low)).isGreaterThanOrEqualTo(3);
        FormFoot foot = foot(low);
        assertThat(foot.getParent()).isNotSameAs(low);
        assertThat(foot.getY())
                .isGreaterThanOrEqualTo(low.form().getY() + low.form().getHeight());

        inside(1366, 1400);
        assertThat(foot.getParent()).as("there is room").isSameAs(low);
        assertThat(foot.getY()).isGreaterThan(low.getHeight() / 2);
    }

    private static long rowsInSight(RunSheetPanel panel) {
        JViewport seen = (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, panel.form());
        return java.util.Arrays.stream(RunField.values())
                .map(field -> panel.form().boxOf(field))
                .map(box -> SwingUtilities.convertRectangle(box.getParent(), box.getBounds(), seen))
                .filter(box -> box.y >= 0 && box.y + box.height <= seen.getHeight())
                .map(box -> box.y)
                .distinct()
                .count();
    }

    private static FormFoot foot(RunSheetPanel panel) {
        return (FormFoot) Stage.visible(panel).stream()
                .filter(FormFoot.class::isInstance)
                .findFirst()
                .orElseThrow();
    }

    private java.awt.Component inside(int width, int height) {
        stage.laidOut(width, height);
        return stage.place.panel();
    }

    @Test
    void in_a_longer_language_nothing_overlaps() {
        stage.close();
        stage = new RunSheetStage(SampleBook.on(SATURDAY), Texts.pseudo());
        stage.open();
        values();
        assertThat(LayoutRules.broken(inside(1366, 768)))
                .filteredOn(fault -> fault.contains("overlaps"))
                .isEmpty();
    }

    /** The rows people fill in at the track stand on the small laptop without scrolling. */
    @Test
    void at_normal_size_the_sheet_needs_no_scrolling() {
        filled().laidOut(1366, 768);
        RunSheetForm form = stage.place.panel().form();
        for (RunField field : RunField.values()) {
            java.awt.Component box = form.boxOf(field);
            java.awt.Rectangle at =
                    javax.swing.SwingUtilities.convertRectangle(box.getParent(), box.getBounds(), stage.place.panel());
            int foot = stage.place.panel().getHeight();
            assertThat(at.y + form.input(field).getY() + form.input(field).getHeight())
                    .as(field.key())
                    .isLessThan(foot);
        }
        javax.swing.JScrollPane scroll = (javax.swing.JScrollPane)
                javax.swing.SwingUtilities.getAncestorOfClass(javax.swing.JScrollPane.class, form);
        assertThat(scroll.getVerticalScrollBar().isVisible()).isFalse();
    }

    @Test
    void everything_that_takes_the_focus_has_a_name_of_its_own() {
        stopped().laidOut(1366, 768);
        assertThat(AccessibleWalk.faults(stage.place.panel())).isEmpty();
        told().laidOut(1366, 768);
        assertThat(AccessibleWalk.faults(stage.place.toldPanel())).isEmpty();
    }

    @Test
    void a_field_says_in_its_description_what_stands_under_it() {
        stopped();
        assertThat(stage.place
                        .panel()
                        .form()
                        .input(RunField.LAPS)
                        .getAccessibleContext()
                        .getAccessibleDescription())
                .isEqualTo("Couldn't read '12abc' for laps. It is written like 12.");
    }

    @ParameterizedTest
    @EnumSource(names = {"LIGHT", "DARK"})
    void every_word_can_be_told_from_what_it_stands_on(Theme theme) {
        stage.close();
        stage = new RunSheetStage(SampleBook.on(SATURDAY), theme, 1.0f);
        filled();
        stage.model().type(RunField.LAPS, "12abc");
        stage.model().ask();
        stage.laidOut(1366, 768);
        assertThat(Contrast.tooLow(stage.place.panel())).isEmpty();
    }

    static Stream<Arguments> pictures() {
        return Stream.of(Theme.LIGHT, Theme.DARK)
                .flatMap(theme -> Stream.of(1.0f, 1.5f).map(zoom -> Arguments.of(theme, zoom)));
    }

    @ParameterizedTest(name = "{0} at {1}")
    @MethodSource("pictures")
    void pictures_for_people(Theme theme, float zoom) {
        stage.close();
        stage = new RunSheetStage(SampleBook.on(SATURDAY), theme, zoom);
        filled();
        String end = theme.name().toLowerCase(java.util.Locale.ROOT) + "_" + Math.round(zoom * 100);
        JRootPane window = stage.laidOut(1366, 768);
        var picture = Pictures.write("run_sheet_" + end, window);

        assertThat(Pictures.colours(picture, 50)).isEqualTo(50);
        assertThat(picture.getRGB(picture.getWidth() - 3, picture.getHeight() - 3))
                .isEqualTo(Palette.BENCH.colour().getRGB());

        stage.place.commands().get(1).perform();
        Pictures.write("run_sheet_told_" + end, told().laidOut(1366, 768));
    }
}
