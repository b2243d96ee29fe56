package witnessmark.desktop.incidents;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.JLabel;
import javax.swing.JRootPane;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.desktop.form.Palette;
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
import witnessmark.logbook.View;
import witnessmark.logbook.run.SampleBook;
import witnessmark.wording.Texts;

/** The page Incidents: as text, by rules of layout, to screen readers, and in pictures for people. */
@UiTest
class IncidentsPageTest {
    @TempDir
    static Path folder;

    /** What can be seen of it. */
    enum Side {
        OPENING,
        SPRINGS,
        CRACK,
        BIG_END,
        BARE
    }

    private static View sample;
    private static View over;

    private IncidentsWindow window;

    @BeforeAll
    static void open() {
        sample = IncidentsWindow.sample();
        over = IncidentsWindow.over(folder);
    }

    @AfterEach
    void close() {
        if (window != null) {
            window.close();
        }
    }

    private JRootPane shown(Side side, Theme theme, float zoom, Texts texts) {
        View view = switch (side) {
            case OPENING -> sample;
            case SPRINGS, CRACK, BIG_END -> over;
            case BARE -> IncidentsWindow.bare();
        };
        window = new IncidentsWindow(Looks.look(theme, zoom), texts, view);
        switch (side) {
            case SPRINGS -> window.choose("INC-06");
            case CRACK -> window.choose("INC-09");
            case BIG_END -> window.choose("INC-05");
            default -> {} // as it comes up
        }
        return window.root(1366, 768);
    }

    /** A figure that nobody knows is no 0, in the list and on the page. */
    @Test
    void of_an_incident_that_is_new_no_cost_is_written_yet() {
        window = new IncidentsWindow(
                Looks.light(),
                IncidentsWindow.english(),
                SampleBook.on(LocalDate.parse("2026-04-15")).view());
        window.choose("INC-03");
        JRootPane root = window.root(1366, 768);
        List<String> figures = Stage.visible(root).stream()
                .filter(JLabel.class::isInstance)
                .map(each -> ((JLabel) each).getText())
                .filter(text -> text != null && text.contains("0.00"))
                .toList();
        assertThat(figures).filteredOn(text -> text.matches("0\\.00.*")).isEmpty();
        JTable list = new Ui(window.place.panel()).table("Incidents");
        List<String> cells = IntStream.range(0, list.getColumnCount())
                .mapToObj(column -> String.valueOf(list.getValueAt(0, column)))
                .toList();
        assertThat(cells.toString()).contains("not written");
        Pictures.write("incidents-new", root);
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void the_page_reads_as_agreed_is_whole_and_told_to_screen_readers(Side side) {
        Component page = shown(side, Theme.LIGHT, 1.0f, IncidentsWindow.english());
        GoldenText.check("incidents_" + side.name().toLowerCase(Locale.ROOT), window.place.panel());
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(AccessibleWalk.faults(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void large_and_dark_nothing_is_cut_and_every_word_can_be_told_from_what_it_stands_on(Side side) {
        Component page = shown(side, Theme.DARK, 1.5f, IncidentsWindow.english());
        assertThat(LayoutRules.broken(page)).as("1366 x 768").isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
        assertThat(LayoutRules.broken(window.root(1100, 700))).as("1100 x 700").isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void in_a_longer_language_nothing_overlaps(Side side) {
        assertThat(LayoutRules.broken(shown(side, Theme.LIGHT, 1.0f, Texts.pseudo())))
                .filteredOn(fault -> fault.contains("overlaps"))
                .isEmpty();
    }

    @Test
    void each_column_opens_to_its_lines_and_the_total_to_all_that_is_in_it() {
        shown(Side.SPRINGS, Theme.LIGHT, 1.0f, IncidentsWindow.english());
        CostSheet cost = window.place.panel().view().cost();
        int all = cost.pieces().shown().size();
        int sum = 0;
        for (int i = 0; i < 3; i++) {
            cost.names().get(i).doClick();
            sum += cost.pieces().shown().size();
        }
        assertThat(sum).isEqualTo(all).isGreaterThan(5);
        cost.names().get(3).doClick();
        assertThat(cost.pieces().shown())
                .isNotEmpty()
                .allSatisfy(piece -> assertThat(piece.column()).isEqualTo("Weekends spoiled"));
    }

    @Test
    void an_incident_it_looks_like_leads_there_and_back() {
        shown(Side.CRACK, Theme.LIGHT, 1.0f, IncidentsWindow.english());
        new Ui(window.place.panel()).button("INC-04").doClick();
        window.tasks.awaitIdle();
        window.root(1366, 768);
        assertThat(window.said()).contains("Hose off, engine boiled").contains("button INC-09");
    }

    @Test
    void what_can_be_written_of_it_opens_its_sheet() {
        shown(Side.OPENING, Theme.LIGHT, 1.0f, IncidentsWindow.english());
        new Ui(window.place.panel()).button("Write a cause…").doClick();
        IncidentsTable table = window.place.panel().table();
        table.ways(table.sheet().shown().get(0)).forEach(way -> way.work().run());
        assertThat(window.asked)
                .startsWith(
                        "cause",
                        "incident_part",
                        "cause",
                        "prevention",
                        "missed_because",
                        "finding",
                        "action",
                        "proof_wanted",
                        "lesson",
                        "incident_link",
                        "write_hold",
                        "close_incident");
    }

    /** Common practice is told only when asked for where causes are written, and a cause is taken on its sheet. */
    @Test
    void what_the_trade_asks_is_shown_when_asked_for_and_a_cause_of_it_fills_its_sheet() {
        shown(Side.SPRINGS, Theme.LIGHT, 1.0f, IncidentsWindow.english());
        Ui page = new Ui(window.place.panel());
        assertThat(window.said()).doesNotContain("Valve spring broken or tired");
        page.button("Show what to ask").doClick();
        JRootPane root = window.root(1366, 3000);
        assertThat(window.said()).contains("Valve spring broken or tired", "None of it was found on this engine");
        assertThat(LayoutRules.broken(root)).isEmpty();
        assertThat(AccessibleWalk.faults(root)).isEmpty();
        Pictures.write("incidents-asked", root);
        page.button("Take as a cause to consider: spring run past its life").doClick();
        assertThat(window.asked).containsExactly("cause");
    }

    @Test
    void the_way_up_to_it_is_there_as_a_table_too() {
        shown(Side.SPRINGS, Theme.LIGHT, 1.0f, IncidentsWindow.english());
        new Ui(window.place.panel()).button("Show as table").doClick();
        JRootPane root = window.root(1366, 3000);
        assertThat(window.said()).contains("Day | Hours | Before it | Seen | Changed", "rebuilt");
        assertThat(LayoutRules.broken(root)).isEmpty();
        Pictures.write("incidents-way-table", root);
    }

    @Test
    void when_it_cannot_be_read_a_sentence_says_so_and_trying_again_brings_it_back() {
        shown(Side.OPENING, Theme.LIGHT, 1.0f, IncidentsWindow.english());
        window.become(() -> {
            throw new IllegalStateException("the file is gone");
        });
        assertThat(window.said()).contains("Nothing in the logbook has changed.", "Try again", "INC-05");
        window.become(() -> sample);
        assertThat(window.said()).doesNotContain("Try again");
    }

    /** All of it, as nobody sees it at once. */
    @ParameterizedTest(name = "{0} {1} at {2}")
    @CsvSource({"BIG_END, LIGHT, 1.0", "BIG_END, DARK, 1.5", "CRACK, LIGHT, 1.0"})
    void the_whole_page_is_laid_out_at_any_height(Side side, Theme theme, float zoom) {
        shown(side, theme, zoom, IncidentsWindow.english());
        JRootPane root = window.root(1366, 3000);
        assertThat(LayoutRules.broken(root)).isEmpty();
        Pictures.write("incidents-whole-" + side + "-" + theme, root);
    }

    @ParameterizedTest(name = "{0} {1} at {2}")
    @CsvSource({
        "OPENING, LIGHT, 1.0",
        "OPENING, DARK, 1.5",
        "SPRINGS, LIGHT, 1.0",
        "SPRINGS, DARK, 1.0",
        "SPRINGS, LIGHT, 1.5",
        "BIG_END, LIGHT, 1.0",
        "BIG_END, DARK, 1.5",
        "BARE, LIGHT, 1.0",
    })
    void it_is_painted_on_its_bench_in_many_colours(Side side, Theme theme, float zoom) {
        JRootPane root = shown(side, theme, zoom, IncidentsWindow.english());
        String name = "incidents-" + side + "-" + theme + "-" + Math.round(zoom * 100);
        BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
        assertThat(Pictures.colours(image, 51)).isGreaterThan(15);
        assertThat(image.getRGB(1364, 40)).isEqualTo(Palette.BENCH.colour().getRGB());
    }
}
