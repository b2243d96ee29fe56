package witnessmark.desktop.engines;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import javax.swing.JRootPane;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.chart.Chart;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.UiTest;
import witnessmark.desktop.trends.TrendsTab;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Standing;
import witnessmark.domain.Warmth;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Texts;

/** The readings of an engine on the day its fourth cylinder is to be looked at, and on the evening the season opens. */
@UiTest
class TrendsTabTest {
    private static Desk october;
    private static Desk july;

    private EnginesWindow window;

    @BeforeAll
    static void tellTheSeason() {
        october = new Desk(
                new MemoryLogbook(SampleViews.end().facts()), new SampleBook.Day(LocalDate.of(2026, 10, 6)), "TE");
        july = EnginesWindow.inMemory();
    }

    @AfterEach
    void close() {
        if (window != null) {
            window.close();
        }
    }

    private JRootPane shown(Desk desk, String engine, Theme theme, float zoom, Texts texts, int width, int height) {
        window = new EnginesWindow(desk, Looks.look(theme, zoom), texts).engine(engine);
        window.place.sheet().tabs().setSelectedComponent(window.place.sheet().trends());
        window.tasks.awaitIdle();
        return window.root(width, height);
    }

    private JRootPane shown(Desk desk, String engine) {
        return shown(desk, engine, Theme.LIGHT, 1.0f, EnginesWindow.english(), 1366, 768);
    }

    private TrendsTab tab() {
        return window.place.sheet().trends();
    }

    @Test
    void the_page_reads_as_agreed_is_whole_and_told_to_screen_readers() {
        Component page = shown(october, "K06");

        GoldenText.check("engines_trends", tab());
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(AccessibleWalk.faults(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
    }

    @Test
    void where_nothing_asks_for_a_look_a_reading_that_is_compared_with_none_before_it_is_told() {
        Entry<Reading> hot = july.view().facts().of(Reading.class).all().stream()
                .filter(reading -> reading.fact().kind() == ReadingKind.LEAK_DOWN
                        && reading.fact().place().equals("2")
                        && reading.fact().engine() != null
                        && reading.fact().warmth() == Warmth.HOT)
                .filter(reading -> july.view()
                        .facts()
                        .of(Engine.class)
                        .get(reading.fact().engine())
                        .number()
                        .equals("K06"))
                .findFirst()
                .orElseThrow();
        Reading plain = new Reading(
                ReadingKind.LEAK_DOWN,
                Moment.of(LocalDate.of(2026, 7, 8).atTime(18, 0), july.view().zone()),
                hot.fact().engine(),
                null,
                "2",
                300L,
                null,
                "",
                Warmth.NOT_SAID,
                false,
                "TE",
                "",
                null);
        Desk with = new Desk(
                new MemoryLogbook(SampleViews.end()
                        .facts()
                        .with(List.of(
                                new Entry<>(new Id<Reading>(new UUID(9, 9)), plain, Standing.IN_FORCE, null, 1)))),
                new SampleBook.Day(LocalDate.of(2026, 7, 8)),
                "TE");
        shown(with, "K06");

        assertThat(GoldenText.of(tab()))
                .contains("Nothing that was read on K06 gets worse or is past its limit. ")
                .contains("Leak-down, held against nothing before it: Cylinder 2: 3 %; it takes 4 readings")
                .contains("made hot not compared");
    }

    @ParameterizedTest(name = "{0} at {1}, {2} x {3}")
    @CsvSource({"DARK, 1.5, 1366, 768", "DARK, 1.5, 1100, 700", "LIGHT, 1.0, 1100, 700"})
    void large_and_dark_nothing_is_cut(Theme theme, float zoom, int width, int height) {
        Component page = shown(october, "K06", theme, zoom, EnginesWindow.english(), width, height);

        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
    }

    @Test
    void words_a_third_longer_fit() {
        assertThat(LayoutRules.broken(shown(october, "K06", Theme.LIGHT, 1.0f, Texts.pseudo(), 1366, 768)))
                .isEmpty();
    }

    @Test
    void the_row_in_hand_has_its_chart_and_the_chart_its_readings_as_rows() {
        shown(october, "K06");
        Chart first = tab().pane().view().drawn().chart();
        assertThat(first.finding()).startsWith("Cylinder 4 leaks more: ");
        assertThat(first.lines().get(0).dots()).hasSize(7);
        assertThat(first.lines().get(1).name()).isEqualTo("line");
        assertThat(first.table().rows().get(0)).startsWith("cylinder 4");
        assertThat(first.levels()).extracting(Chart.Mark::label).contains("at most 10 %");

        JTable rows = (JTable) tab().first();
        rows.setRowSelectionInterval(1, 1);

        assertThat(tab().pane().view().drawn().chart().finding()).startsWith("Exhaust 4A");
    }

    @Test
    void enter_opens_the_last_reading_and_a_point_of_the_chart_its_own() {
        shown(october, "K06");
        JTable rows = (JTable) tab().first();
        rows.getActionMap().get("wm-open").actionPerformed(null);
        window.tasks.awaitIdle();

        assertThat(window.said()).contains("Cylinder 4 leaks more");
    }

    @Test
    void it_is_found_by_its_words_and_comes_up_with_the_focus_in_the_list() {
        shown(october, "K06");
        window.place.sheet().tabs().setSelectedIndex(0);
        window.place.commands().stream()
                .filter(command -> command.name().startsWith("Where readings"))
                .findFirst()
                .orElseThrow()
                .perform();
        window.tasks.awaitIdle();

        assertThat(window.place.sheet().tabs().getSelectedComponent()).isSameAs(tab());
    }

    @Test
    void an_engine_of_which_nothing_was_read_says_how_to_write_a_reading() {
        shown(july, "K22");

        assertThat(GoldenText.of(tab())).contains("Nothing was read on K22 yet. Readings are written with New reading");
    }

    @ParameterizedTest(name = "{0} {1} at {2}")
    @CsvSource({"K06, LIGHT, 1.0", "K06, DARK, 1.0", "K06, LIGHT, 1.5", "K05, DARK, 1.0"})
    void it_is_painted_in_many_colours(String engine, Theme theme, float zoom) {
        JRootPane root = shown(october, engine, theme, zoom, EnginesWindow.english(), 1366, 768);
        String name = "engines-trends-" + engine + "-" + theme + "-" + Math.round(zoom * 100);
        BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);

        assertThat(Pictures.colours(image, 51)).isGreaterThan(50);
    }
}
