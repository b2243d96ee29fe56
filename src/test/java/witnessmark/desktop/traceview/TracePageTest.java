package witnessmark.desktop.traceview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.chart.Sampled;
import witnessmark.chart.Stretch;
import witnessmark.chart.TraceRows;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Id;
import witnessmark.domain.Trace;
import witnessmark.logbook.Desk;
import witnessmark.logbook.tracing.SeeTrace;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleTraces;
import witnessmark.trace.FileCells;
import witnessmark.trace.LoggerFiles;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The page of a trace: what it says, what its keys do, another run laid over it. */
@UiTest
class TracePageTest {
    @TempDir
    private static Path folder;

    private static Desk desk;
    private static Id<Trace> race;
    private static Id<Trace> test;
    private static FileCells file = FileCells.of("Time [s]");

    @BeforeAll
    static void read() {
        desk = TraceWindow.book(folder);
        race = SeeTrace.all(desk.view()).get(0).trace().id();
        test = SeeTrace.all(desk.view()).get(1).trace().id();
        file = FileCells.of(LoggerFiles.mechanicalOverRev());
    }

    @AfterAll
    static void end() {
        desk.logbook().close();
    }

    private static TraceWindow window() {
        return new TraceWindow(desk, Looks.light(), Texts.in(Locale.UK));
    }

    private static void press(Component on, int key, boolean shift) {
        RowsView view = (RowsView) on;
        KeyStroke stroke = KeyStroke.getKeyStroke(key, shift ? KeyEvent.SHIFT_DOWN_MASK : 0);
        view.getActionMap().get(view.getInputMap().get(stroke)).actionPerformed(null);
    }

    @Test
    void what_it_says_is_known() {
        try (TraceWindow window = window()) {
            window.open(race);
            window.root(1366, 768);
            GoldenText.check("traceview_race", window.page.component());
        }
    }

    @Test
    void it_answers_first_what_the_engine_did_worst_with_the_cross_hair_on_it() {
        try (TraceWindow window = window()) {
            window.open(race);
            window.root(1366, 768);
            TraceRows chart = window.page.chart().orElseThrow();
            assertThat(chart.finding()).isEqualTo("Race 1: mechanical over-rev at 18:47.4, 9\u2009340 rpm for 0.42 s");
            assertThat(chart.rows())
                    .extracting(TraceRows.Row::name)
                    .containsExactly(
                            "engine speed", "oil pressure", "throttle", "water temperature", "oil temperature");
            // beyond 8 500 rpm from 1 127.42 s on, for 0.42 s; its first sample of 9 340 rpm at 1 127.58 s
            double hair = window.page.panel().view().hair();
            assertThat(hair).isCloseTo(1127.58, within(0.001));
            Sampled speed = chart.rows().get(0).curves().get(0);
            assertThat(speed.most(hair)).isEqualTo(file.at("Engine Speed [rpm]", hair));
            assertThat(speed.most(hair)).as("where it is worst").isEqualTo(9340);
            assertThat(chart.rows().get(2).curves().get(0).most(hair)).isZero();
            assertThat(chart.description()).contains("5 channels over 29:06.0").contains("1 mark.");
        }
    }

    /** The floor is that of the trace's own settings: half a bar for each thousand rpm, above 4 000 rpm. */
    @Test
    void oil_pressure_has_its_floor_at_the_speed_of_that_moment() {
        try (TraceWindow window = window()) {
            window.open(race);
            TraceRows chart = window.page.chart().orElseThrow();
            Sampled speed = chart.rows().get(0).curves().get(0);
            Sampled floor = chart.rows().get(1).floor();
            assertThat(floor).isNotNull();
            for (double at = 0.01; at < 1799; at += 13.7) {
                double rpm = speed.most(at);
                double asked = floor.most(at);
                if (rpm > 4000) {
                    assertThat(asked).isCloseTo(rpm * 0.5 / 1000, within(1e-9));
                } else {
                    assertThat(asked).isNaN();
                }
            }
        }
    }

    @Test
    void keys_go_over_it_and_look_closer() {
        try (TraceWindow window = window()) {
            window.open(race);
            window.root(1366, 768);
            RowsView view = window.page.panel().view();
            view.paint(new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics());
            Stretch seen = view.drawn().seen();
            double pixel = seen.width() / view.drawn().places().get(0).getWidth();
            double at = view.hair();
            double last = DoubleStream.of(file.time()).max().orElseThrow();
            press(view, KeyEvent.VK_RIGHT, false);
            assertThat(view.hair()).isCloseTo(at + pixel, within(1e-6));
            press(view, KeyEvent.VK_PLUS, false);
            press(view, KeyEvent.VK_PLUS, false);
            assertThat(seen.width()).isCloseTo(0.49 * last, within(0.1));
            assertThat(view.hair()).isBetween(seen.from(), seen.to());
            double from = seen.from();
            press(view, KeyEvent.VK_LEFT, true);
            assertThat(seen.from()).isCloseTo(Math.max(0, from - seen.width() / 4), within(1e-6));
            press(view, KeyEvent.VK_END, false);
            assertThat(view.hair()).isCloseTo(last, within(1e-6));
            assertThat(seen.to()).isCloseTo(last, within(1e-6));
            press(view, KeyEvent.VK_HOME, false);
            assertThat(view.hair()).isZero();
            press(view, KeyEvent.VK_DOWN, false);
            assertThat(window.page.panel().side().markTable().selected().what()).isEqualTo("mechanical over-rev");
            assertThat(view.hair()).isCloseTo(1127.58, within(0.001));
            press(view, KeyEvent.VK_MINUS, false);
            press(view, KeyEvent.VK_0, false);
            assertThat(seen.isWhole()).isTrue();
        }
    }

    @Test
    void escape_shows_all_again_first_and_leaves_then() {
        try (TraceWindow window = window()) {
            window.open(race);
            window.root(1366, 768);
            RowsView view = window.page.panel().view();
            view.paint(new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics());
            KeyStroke escape = KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0);
            press(view, KeyEvent.VK_PLUS, false);
            Ui.press(window.page.panel(), escape);
            assertThat(view.drawn().seen().isWhole()).isTrue();
            assertThat(window.led).doesNotContain("left");
            Ui.press(window.page.panel(), escape);
            assertThat(window.led).contains("left");
        }
    }

    /** The sensor of the test drops out at 620.0 s and at 1 160.0 s, each time for 0.2 s. */
    @Test
    void up_and_down_go_from_mark_to_mark() {
        try (TraceWindow window = window()) {
            window.open(test);
            window.root(1366, 768);
            RowsView view = window.page.panel().view();
            view.paint(new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics());
            press(view, KeyEvent.VK_HOME, false);
            int[] keys = {KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_UP, KeyEvent.VK_UP};
            double[] seconds = {620.0, 1160.0, 1160.0, 620.0, 620.0};
            for (int i = 0; i < keys.length; i++) {
                press(view, keys[i], false);
                assertThat(view.hair()).as("key " + i).isCloseTo(seconds[i], within(0.01));
                MarkLine mark = window.page.panel().side().markTable().selected();
                assertThat(mark.what()).isEqualTo("sensor drop");
                assertThat(mark.seconds()).isCloseTo(seconds[i], within(1e-6));
            }
        }
    }

    @Test
    void enter_on_a_mark_looks_closely_at_it_and_its_figures_follow() {
        try (TraceWindow window = window()) {
            window.open(race);
            window.root(1366, 768);
            SideTables side = window.page.panel().side();
            side.markTable().select(side.markTable().shown().get(0));
            side.markTable().table().getActionMap().get("wm-open").actionPerformed(null);
            window.tasks.awaitIdle();
            assertThat(window.page.panel().view().drawn().seen().width()).isLessThan(10);
            assertThat(side.figureTable().shown().get(0))
                    .returns("engine speed, rpm", FigureLine::channel)
                    .returns("9\u2009340", FigureLine::most);
        }
    }

    @Test
    void another_run_lies_over_it_aligned_at_the_start_and_can_be_shifted() {
        try (TraceWindow window = window()) {
            window.open(race);
            window.root(1366, 768);
            window.page.layOver(test);
            window.tasks.awaitIdle();
            Sampled laid =
                    window.page.chart().orElseThrow().rows().get(0).curves().get(1);
            double then = laid.most(100.01);
            window.page.panel().shift().box().field().setText("-2.5");
            Sampled moved =
                    window.page.chart().orElseThrow().rows().get(0).curves().get(1);
            assertThat(moved.most(97.51)).isEqualTo(then);
            assertThat(window.page.chart().orElseThrow().note())
                    .contains("K05, Run 3")
                    .contains("2.5 s earlier");
            window.page.panel().shift().box().field().setText("soon");
            assertThat(window.page.chart().orElseThrow().note())
                    .as("what cannot be read changes nothing")
                    .contains("2.5 s");
            List<BandLine> bands = window.page.panel().side().speedTable().shown();
            long own = bands.stream().mapToLong(BandLine::millis).sum();
            long other = bands.stream().mapToLong(BandLine::over).sum();
            assertThat(own)
                    .isEqualTo(SeeTrace.of(desk.view(), race)
                            .orElseThrow()
                            .speeds()
                            .total());
            assertThat(other)
                    .isEqualTo(SeeTrace.of(desk.view(), test)
                            .orElseThrow()
                            .speeds()
                            .total());
        }
    }

    @Test
    void the_channels_chosen_are_found_again() {
        try (TraceWindow window = window()) {
            window.open(race);
            ShownChannels channels = new ShownChannels(window.settings);
            var kept = SeeTrace.samples(
                            desk.logbook(),
                            SeeTrace.of(desk.view(), race).orElseThrow().trace().fact())
                    .orThrow()
                    .orElseThrow();
            channels.show(ShownChannels.all(kept).get(1), false);
            assertThat(new ShownChannels(window.settings).drawn(kept))
                    .extracting(channel -> channel.form().kind().code())
                    .containsExactly("engine speed", "throttle", "water temperature", "oil temperature");
            ShownChannels.all(kept).forEach(channel -> channels.show(channel, false));
            assertThat(channels.drawn(kept)).as("never nothing").hasSize(1);
        }
    }

    @Test
    void nobody_wrote_how_speed_wears_and_it_says_where_to() {
        try (TraceWindow window = window()) {
            window.open(race);
            assertThat(window.page.panel().side().wearSaid())
                    .contains("Nobody wrote how speed wears")
                    .contains("Record, Engines and cars");
        }
    }

    @Test
    void figures_are_in_the_units_of_the_team() {
        try (TraceWindow window = new TraceWindow(desk, Looks.light(), Texts.in(Locale.UK), Units.IMPERIAL)) {
            window.open(race);
            window.root(1366, 768);
            TraceRows.Row oil = window.page.chart().orElseThrow().rows().get(1);
            TraceRows.Row water = window.page.chart().orElseThrow().rows().get(3);
            assertThat(oil.unit()).isEqualTo("psi");
            assertThat(water.unit()).isEqualTo("°F");
            // 14.503773773 psi to the bar; degrees Fahrenheit are 1.8 times those Celsius and 32 (NIST SP 811)
            assertThat(oil.high()).isBetween(70.0, 80.0);
            for (double at = 0.49; at < 1746; at += 97) {
                double fahrenheit = 1.8 * file.at("Water Temp [°C]", at) + 32;
                assertThat(water.curves().get(0).most(at)).as("at " + at).isCloseTo(fahrenheit, within(1e-6));
            }
            double hair = window.page.panel().view().hair(); // where samples are at hand one by one
            double psi = 14.503773773 * file.at("Oil Press [bar]", hair);
            assertThat(oil.curves().get(0).most(hair)).isCloseTo(psi, within(1e-6 * psi));
        }
    }

    @Test
    void the_chart_as_a_table_says_the_same() {
        try (TraceWindow window = window()) {
            window.open(race);
            window.root(1366, 768);
            window.page.toggle();
            window.root(1366, 768);
            assertThat(window.said()).contains("engine speed, rpm");
            double[] time = file.time();
            double[] water = file.column("Water Temp [°C]");
            double piece = time[time.length - 1] / 60;
            for (int row = 0; row < 5; row++) { // as many as the text of a page has of a table
                double from = row * piece;
                DoubleSummaryStatistics piecemeal = IntStream.range(0, time.length)
                        .filter(i -> time[i] >= from && time[i] < from + piece)
                        .mapToDouble(i -> water[i])
                        .summaryStatistics();
                assertThat(window.said())
                        .contains(" | %.1f\u2013%.1f | ".formatted(piecemeal.getMin(), piecemeal.getMax()));
            }
            window.page.toggle();
            assertThat(window.page.panel().view().isVisible()).isTrue();
        }
    }

    @Test
    void without_samples_it_says_so_and_shows_what_the_record_has(@TempDir Path other) {
        Desk bare = new SampleBooks(other).untraced();
        Id<Trace> trace = SampleTraces.bringIn(bare, "2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev(), false);
        try (TraceWindow window = new TraceWindow(bare, Looks.light(), Texts.in(Locale.UK))) {
            window.open(trace);
            window.root(1366, 768);
            assertThat(window.said())
                    .contains("Its samples are not kept in this logbook")
                    .contains("mechanical over-rev");
            assertThat(window.page.panel().side().speedTable().shown()).isNotEmpty();
            bare.undo().orThrow();
            window.page.changed();
            window.tasks.awaitIdle();
            assertThat(window.led).as("gone with its entry").containsExactly("left");
        }
        bare.logbook().close();
    }

    @ParameterizedTest
    @EnumSource
    void it_can_be_read_and_heard(Theme theme) {
        try (TraceWindow window = new TraceWindow(desk, Looks.look(theme, 1f), Texts.in(Locale.UK))) {
            window.open(race);
            window.root(1366, 768);
            for (int tab = 0; tab < window.page.panel().tabs().getTabCount(); tab++) {
                window.page.panel().tabs().setSelectedIndex(tab);
                Component page = window.root(1366, 768);
                assertThat(LayoutRules.broken(page)).isEmpty();
                assertThat(AccessibleWalk.faults(page)).isEmpty();
                assertThat(Contrast.tooLow(page)).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(floats = {1f, 1.5f})
    void it_is_whole_in_a_language_a_third_longer(float zoom) {
        try (TraceWindow window = new TraceWindow(desk, Looks.look(Theme.LIGHT, zoom), Texts.pseudo())) {
            window.open(race);
            assertThat(LayoutRules.broken(window.root(1366, 768))).isEmpty();
            window.page.layOver(test);
            window.tasks.awaitIdle();
            assertThat(LayoutRules.broken(window.root(1366, 768))).isEmpty();
        }
    }
}
