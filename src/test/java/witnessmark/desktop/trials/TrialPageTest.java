package witnessmark.desktop.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.util.Locale;
import javax.swing.JRootPane;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.chart.LivesChart;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Part;
import witnessmark.logbook.View;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Texts;

/** The page of a trial: what it says, what its keys do, and that nothing on it is cut, light and dark, at both sizes. */
@UiTest
class TrialPageTest {
    private static View opening = TrialWindow.springs(16);
    private static View end = opening;
    private static View springs = opening;

    @BeforeAll
    static void read() {
        opening = SampleViews.opening();
        end = SampleViews.end();
    }

    private static View view(String which) {
        return switch (which) {
            case "OPENING" -> opening;
            case "END" -> end;
            case "SPRINGS" -> springs;
            default -> SampleViews.on(opening.facts(), java.time.LocalDate.parse("2026-05-01"));
        };
    }

    private static TrialWindow window(View view) {
        return new TrialWindow(Looks.light(), Texts.in(Locale.UK), view);
    }

    @ParameterizedTest(name = "{0}, {1} at {2}")
    @CsvSource({
        "OPENING, LIGHT, 1.0",
        "END, DARK, 1.0",
        "SPRINGS, LIGHT, 1.0",
        "SPRINGS, DARK, 1.5",
        "SPRINGS, LIGHT, 1.5",
        "NONE, LIGHT, 1.0",
    })
    void it_is_painted_and_nothing_is_cut(String which, Theme theme, float zoom) {
        try (TrialWindow window = new TrialWindow(Looks.look(theme, zoom), Texts.in(Locale.UK), view(which))) {
            JRootPane root = window.root(1366, 768);
            window.page.panel().lives().choose(which.equals("SPRINGS") ? 1 : 0);
            String name = "trial-" + which + "-" + theme + "-" + Math.round(zoom * 100);
            BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
            assertThat(Pictures.colours(image, 51)).isGreaterThan(which.equals("NONE") ? 15 : 30);
            assertThat(LayoutRules.broken(root)).isEmpty();
            assertThat(AccessibleWalk.faults(root)).isEmpty();
            assertThat(Contrast.tooLow(root)).isEmpty();
            assertThat(LayoutRules.broken(window.root(1100, 700))).isEmpty();
        }
    }

    @Test
    void in_a_longer_language_nothing_overlaps() {
        try (TrialWindow window = new TrialWindow(Looks.light(), Texts.pseudo(), springs)) {
            assertThat(LayoutRules.broken(window.root(1366, 768)))
                    .filteredOn(fault -> fault.contains("overlaps"))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"OPENING", "END", "SPRINGS", "NONE"})
    void what_it_says_is_known(String which) {
        try (TrialWindow window = window(view(which))) {
            window.root(1366, 768);
            GoldenText.check("trial_" + which.toLowerCase(Locale.ROOT), window.page.component());
        }
    }

    private static void press(Component on, int key) {
        LivesView view = (LivesView) on;
        view.getActionMap()
                .get(view.getInputMap().get(KeyStroke.getKeyStroke(key, 0)))
                .actionPerformed(null);
    }

    @Test
    void keys_go_from_strip_to_strip_and_open_the_part() {
        try (TrialWindow window = window(opening)) {
            window.root(1366, 768);
            LivesView lives = window.page.panel().lives();
            press(lives, KeyEvent.VK_DOWN);
            assertThat(window.page.panel().readout())
                    .isEqualTo("HG-06b, K06, head gasket, Fri 5 Jun 2026: from new to 2.92 h, still in");
            assertThat(lives.getAccessibleContext().getAccessibleDescription()).startsWith("HG-06b");
            for (int i = 0; i < 20; i++) {
                press(lives, KeyEvent.VK_DOWN);
            }
            assertThat(window.page.panel().readout()).startsWith("HG-06a").contains("INC-04: damaged");
            press(lives, KeyEvent.VK_ENTER);
            assertThat(window.asked)
                    .containsExactly("part "
                            + opening.facts()
                                    .of(Part.class)
                                    .named("HG-06a")
                                    .orElseThrow()
                                    .id()
                                    .text());
        }
    }

    /** The strips end where the lives of the answer end, and the shape tells how. */
    @Test
    void strips_are_drawn_to_one_scale_with_the_limit_on_it() {
        try (TrialWindow window = window(springs)) {
            window.root(1366, 768);
            LivesChart chart = window.page.panel().trial().chosen().chart();
            assertThat(chart.limit().at()).isEqualTo(12);
            assertThat(chart.groups()).hasSize(2);
            assertThat(chart.strips())
                    .hasSize(16)
                    .allSatisfy(strip -> assertThat(strip.to()).isBetween(strip.from(), chart.scale()));
            assertThat(chart.strips().stream().filter(strip -> strip.ended() == LivesChart.Ended.FAILED))
                    .hasSize(13);
            assertThat(chart.strips().stream().filter(strip -> !strip.sure())).hasSize(1);
            assertThat(chart.strips().stream().filter(strip -> strip.from() == 3))
                    .hasSize(1);
            assertThat(chart.table().tabbed().lines()).hasSize(17);
        }
    }

    /** With few a figure is kept back and said why; with many it is said, in words too. */
    @Test
    void the_test_speaks_once_there_is_room_for_it() {
        try (TrialWindow few = window(springs);
                TrialWindow many = window(TrialWindow.springs(60))) {
            few.root(1366, 768);
            many.root(1366, 768);
            assertThat(GoldenText.of(few.page.component()))
                    .contains("13 failed on both sides together: too few for a figure.", "here it is 2.6.")
                    .doesNotContain("chi-square");
            assertThat(GoldenText.of(many.page.component()))
                    .contains("Log-rank test: chi-square ", " of one degree of freedom, P ")
                    .contains("Were both alike, chance alone would bring as great a difference in ")
                    .contains("What comes of it a person says.");
        }
    }

    @Test
    void a_verdict_is_a_persons_and_closes_the_asking() {
        try (TrialWindow window = window(end)) {
            window.root(1366, 768);
            assertThat(GoldenText.of(window.page.component()))
                    .contains("As good, judged on Mon 26 Oct 2026 by Crew chief", "On the grounds: sealed all round");
        }
    }

    @Test
    void when_it_cannot_be_read_a_sentence_says_so() {
        try (TrialWindow window = window(opening)) {
            window.root(1366, 768);
            window.become(() -> {
                throw new IllegalStateException("the file is gone");
            });
            assertThat(GoldenText.of(window.page.component())).contains("Nothing in the logbook has changed.");
            window.become(() -> opening);
            assertThat(GoldenText.of(window.page.component())).doesNotContain("Nothing in the logbook");
        }
    }
}
