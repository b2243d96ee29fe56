package witnessmark.desktop.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.desktop.form.SheetMenu;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.View;
import witnessmark.wording.Texts;

/** The page Parts shelf: as text, by rules of layout, and to screen readers. */
@UiTest
class ShelfPageTest {
    /** What can be seen of it. */
    enum Side {
        SAMPLE,
        SMALL,
        BORROWED,
        NO_SUCH,
        BARE
    }

    private static View sample;

    private ShelfWindow window;

    @BeforeAll
    static void open() {
        sample = ShelfWindow.sample();
    }

    @AfterEach
    void close() {
        if (window != null) {
            window.close();
        }
    }

    private JRootPane shown(Side side, Theme theme, float zoom, Texts texts) {
        View view = switch (side) {
            case SAMPLE, NO_SUCH -> sample;
            case SMALL, BORROWED -> ShelfWindow.small();
            case BARE -> ShelfWindow.bare();
        };
        window = new ShelfWindow(Looks.look(theme, zoom), texts, view);
        switch (side) {
            case BORROWED -> window.where(Whereabout.BORROWED);
            case NO_SUCH -> window.where(Whereabout.BORROWED);
            default -> {} // as it comes up
        }
        return window.root(1366, 768);
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void the_page_reads_as_agreed_is_whole_and_told_to_screen_readers(Side side) {
        Component page = shown(side, Theme.LIGHT, 1.0f, ShelfWindow.english());
        GoldenText.check("shelf_" + side.name().toLowerCase(Locale.ROOT), window.place.panel());
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(AccessibleWalk.faults(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
    }

    /** The same in the dark and larger, on the small laptop and in the smallest window. */
    @ParameterizedTest
    @EnumSource(Side.class)
    void large_and_dark_nothing_is_cut_and_every_word_can_be_told_from_what_it_stands_on(Side side) {
        Component page = shown(side, Theme.DARK, 1.5f, ShelfWindow.english());
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

    /** The coated gasket is on trial against the plain one; springs are in none. */
    @Test
    void a_part_whose_design_is_on_trial_leads_to_the_trial() {
        shown(Side.SAMPLE, Theme.LIGHT, 1.0f, ShelfWindow.english());
        List<String> opened = new ArrayList<>();
        window.place.onTrial(opened::add);
        PartsTable parts = window.place.panel().parts();
        List<SheetMenu.Way> ways = parts.ways(window.part("HG-06b"));

        assertThat(ways.get(1).caption().text()).isEqualTo("Look at the trial of its design");
        ways.get(1).work().run();
        assertThat(opened).containsExactly(window.part("HG-06b").id());
        assertThat(parts.ways(window.part("HG-03b"))).hasSameSizeAs(ways);
        assertThat(parts.ways(window.part("VS-03")))
                .extracting(way -> way.caption().text())
                .doesNotContain("Look at the trial of its design");
    }

    @Test
    void when_it_cannot_be_read_a_sentence_says_so_and_trying_again_brings_it_back() {
        shown(Side.SMALL, Theme.LIGHT, 1.0f, ShelfWindow.english());
        window.become(() -> {
            throw new IllegalStateException("the file is gone");
        });
        assertThat(window.said()).contains("Nothing in the logbook has changed.", "Try again", "VS-03");
        window.become(ShelfWindow::small);
        assertThat(window.said()).doesNotContain("Try again");
    }
}
