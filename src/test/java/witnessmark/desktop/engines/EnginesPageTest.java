package witnessmark.desktop.engines;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.Desk;
import witnessmark.wording.Texts;

/** The page Engines on the sample season: as text, by rules of layout, and to screen readers. */
@UiTest
class EnginesPageTest {
    /** What can be seen of one engine. */
    enum Side {
        BUILD,
        LIVES,
        CURVES,
        CURVES_AS_TABLE,
        DYNO,
        DYNO_AS_TABLE,
        BEHIND,
        STRIKING,
        HISTORY,
        OTHER_DAY,
        PART,
        PART_BEHIND
    }

    @TempDir
    private static Path folder;

    private static Desk desk;

    private EnginesWindow window;

    @BeforeAll
    static void open() {
        desk = EnginesWindow.sample(folder);
    }

    @AfterEach
    void close() {
        desk.lookAsOf(null);
        if (window != null) {
            window.close();
        }
    }

    private JRootPane shown(Side side, Theme theme, float zoom, Texts texts, int width, int height) {
        window = new EnginesWindow(desk, Looks.look(theme, zoom), texts).engine("K03");
        switch (side) {
            case BUILD -> {}
            case LIVES -> window.place.sheet().tabs().setSelectedIndex(1);
            case CURVES -> window.place.sheet().tabs().setSelectedIndex(2);
            case CURVES_AS_TABLE -> {
                window.place.sheet().tabs().setSelectedIndex(2);
                window.place.sheet().curves().chart().toggle();
            }
            case DYNO -> window.place.sheet().tabs().setSelectedIndex(3);
            case DYNO_AS_TABLE -> {
                window.place.sheet().tabs().setSelectedIndex(3);
                window.place.sheet().dyno().charts().toggle();
            }
            case BEHIND -> window.behindSinceRebuild();
            case STRIKING -> {
                window.behindSinceRebuild();
                window.place.sheet().beside().behind().takeFocus();
                window.place.sheet().beside().behind().actions().ask();
            }
            case HISTORY -> {
                window.behindSinceRebuild();
                window.place.sheet().beside().behind().takeFocus();
                window.place.sheet().beside().behind().actions().historyButton().doClick();
            }
            case OTHER_DAY -> {
                window.behindSinceRebuild();
                desk.lookAsOf(LocalDate.of(2026, 5, 4));
                window.window.changed();
            }
            case PART -> window.part("HD-05");
            case PART_BEHIND -> {
                window.part("HD-05");
                window.behindItsLife();
            }
        }
        window.tasks.awaitIdle();
        return window.root(width, height);
    }

    private JRootPane shown(Side side) {
        return shown(side, Theme.LIGHT, 1.0f, EnginesWindow.english(), 1366, 768);
    }

    /** All that can be seen on one window at normal size. */
    @ParameterizedTest
    @EnumSource(Side.class)
    void the_page_reads_as_agreed_is_whole_and_told_to_screen_readers(Side side) {
        Component page = shown(side);
        String name = side.name().toLowerCase(java.util.Locale.ROOT);
        GoldenText.check(
                "engines_" + name,
                switch (side) {
                    case BUILD, OTHER_DAY -> (Container) window.place.component();
                    case LIVES, CURVES, CURVES_AS_TABLE, DYNO, DYNO_AS_TABLE ->
                        window.place.sheet().tabs();
                    case BEHIND, STRIKING, HISTORY ->
                        window.place.sheet().beside().behind();
                    case PART, PART_BEHIND -> window.place.part().component();
                });
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(AccessibleWalk.faults(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
    }

    /** The same in the dark and larger, on the small laptop and in the smallest window. */
    @ParameterizedTest
    @EnumSource(Side.class)
    void large_and_dark_nothing_is_cut_and_every_word_can_be_told_from_what_it_stands_on(Side side) {
        Component page = shown(side, Theme.DARK, 1.5f, EnginesWindow.english(), 1366, 768);
        assertThat(LayoutRules.broken(page)).as("1366 x 768").isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
        assertThat(LayoutRules.broken(window.root(1100, 700))).as("1100 x 700").isEmpty();
    }

    @Test
    void both_curves_of_a_dyno_sheet_are_copied_and_that_is_said() {
        shown(Side.DYNO);
        List<String> said = new ArrayList<>();
        window.place.sheet().copyChart(said::add);
        assertThat(said).containsExactly("The picture is on the clipboard, its figures beside it as text.");
    }

    @Test
    void an_earlier_day_is_said_over_the_page_and_offers_the_way_back() {
        window = new EnginesWindow(desk, Looks.light(), EnginesWindow.english()).engine("K03");
        window.place.commands().get(0).perform();
        window.place.asOf().day().field().setText("4 May 2026");
        window.place.asOf().take();
        window.tasks.awaitIdle();
        assertThat(GoldenText.of(window.root(1366, 768)))
                .contains("label Mon 4 May 2026\n", "Back to today", "as of Mon 4 May 2026");

        window.place.commands().get(1).perform();
        window.tasks.awaitIdle();
        assertThat(GoldenText.of(window.root(1366, 768)))
                .contains("label Wed 8 Jul 2026\n")
                .doesNotContain("Back to today");
    }

    /** A filter left on in the evening is still on, and said, in the morning; the first engine it leaves is in hand. */
    @Test
    void the_list_is_filtered_until_the_program_starts_again() {
        window = new EnginesWindow(desk, Looks.light(), EnginesWindow.english());
        window.filter(window.place.lists().engines().sheet(), "k2");
        assertThat(window.place.lists().engines().sheet().shown())
                .extracting(EngineLine::number)
                .containsExactly("K21", "K22");
        window.root(1366, 768);
        assertThat(window.said()).contains("Filter this list: k2", "label 2 of 5");
        window = window.again();
        assertThat(window.place.lists().engines().sheet().shown()).hasSize(5);
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void in_a_longer_language_nothing_overlaps(Side side) {
        Component page = shown(side, Theme.LIGHT, 1.0f, Texts.pseudo(), 1366, 768);
        assertThat(LayoutRules.broken(page))
                .filteredOn(fault -> fault.contains("overlaps"))
                .isEmpty();
    }
}
