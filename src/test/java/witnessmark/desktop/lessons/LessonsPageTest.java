package witnessmark.desktop.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.View;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The page of all lessons at the end of the invented season: as text, by rules of layout, to screen readers, in pictures. */
@UiTest
class LessonsPageTest {
    private static View over;

    private final List<String> asked = new ArrayList<>();
    private final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });

    @BeforeAll
    static void tell() {
        over = SampleViews.on(SampleViews.end().facts(), LocalDate.parse("2026-10-27"));
    }

    @AfterEach
    void close() {
        tasks.awaitIdle();
        tasks.close();
    }

    private JComponent page(View view, Theme theme, float zoom, Texts texts) {
        Looks.look(theme, zoom);
        LessonsAside page = new LessonsAside(
                new SheetTools(texts, tasks, new MemorySettings()),
                new Measures(texts, Units.METRIC),
                () -> view,
                new LessonsAsked(
                        aside -> {},
                        () -> asked.add("leave"),
                        () -> asked.add("write"),
                        lesson -> asked.add("withdraw " + lesson),
                        incident -> asked.add("incident " + incident),
                        build -> asked.add("build " + build)));
        page.open();
        tasks.awaitIdle();
        JPanel bench = Styles.as(Styles.BENCH, new JPanel(new BorderLayout()));
        bench.add(page.component());
        return bench;
    }

    private static JRootPane root(JComponent page) {
        return Stage.window(page, (JMenuBar) null, 1140, 640);
    }

    @Test
    void it_reads_as_agreed_is_whole_and_told_to_screen_readers() {
        JComponent page = page(over, Theme.LIGHT, 1.0f, Texts.in(Locale.UK));
        JRootPane root = root(page);
        GoldenText.check("lessons", page);
        assertThat(LayoutRules.broken(root)).isEmpty();
        assertThat(AccessibleWalk.faults(root)).isEmpty();
        assertThat(Contrast.tooLow(root)).isEmpty();
    }

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({"LIGHT, 1.0", "DARK, 1.0", "DARK, 1.5"})
    void pictures_for_people_in_which_nothing_is_cut(Theme theme, float zoom) {
        JRootPane root = root(page(over, theme, zoom, Texts.in(Locale.UK)));
        Pictures.write("lessons-" + theme.name().toLowerCase(Locale.ROOT) + "-" + Math.round(zoom * 100), root);
        assertThat(LayoutRules.broken(root)).isEmpty();
        assertThat(Contrast.tooLow(root)).isEmpty();
    }

    @Test
    void in_a_longer_language_nothing_overlaps() {
        assertThat(LayoutRules.broken(root(page(over, Theme.LIGHT, 1.0f, Texts.pseudo()))))
                .filteredOn(fault -> fault.contains("overlaps"))
                .isEmpty();
    }

    @Test
    void a_lesson_leads_to_its_incident_and_to_the_sheets_that_asked_it() {
        JComponent page = page(over, Theme.LIGHT, 1.0f, Texts.in(Locale.UK));
        root(page);
        new Ui(page).button("INC-09").doClick();
        new Ui(page).button("K22, build 3").doClick();
        assertThat(asked).hasSize(2);
        assertThat(asked.get(0)).startsWith("incident ");
        assertThat(asked.get(1)).startsWith("build ");
    }

    @Test
    void where_nothing_was_learned_it_says_where_to_begin() {
        JComponent page = page(
                SampleViews.on(over.facts(), LocalDate.parse("2026-05-01")), Theme.LIGHT, 1.0f, Texts.in(Locale.UK));
        root(page);
        assertThat(GoldenText.of(page)).contains("No lesson is written");
    }
}
