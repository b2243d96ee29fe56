package witnessmark.logbook.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.Entry;
import witnessmark.domain.PartKind;
import witnessmark.domain.RevExponent;
import witnessmark.domain.Standing;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMarkKind;
import witnessmark.logbook.Desk;
import witnessmark.quantity.EngineSpeed;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleTraces;
import witnessmark.trace.FileCells;
import witnessmark.trace.LoggerFiles;
import witnessmark.trace.result.ChannelFigures;
import witnessmark.trace.result.PartWear;
import witnessmark.trace.result.ThermalRanges;
import witnessmark.trace.result.Wave;

/** Traces of the invented season seen again. The oracle is the text of the files themselves. */
class SeeTraceTest {
    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).untraced();
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private KeptTrace kept(SeenTrace trace) {
        return SeeTrace.samples(desk.logbook(), trace.trace().fact()).orThrow().orElseThrow();
    }

    @Test
    void it_comes_with_its_run_its_engine_and_its_marks_in_the_order_of_time() {
        SampleTraces.race(desk);
        SampleTraces.test(desk);

        List<SeenTrace> all = SeeTrace.all(desk.view());
        assertThat(all).extracting(trace -> trace.run().fact().name()).containsExactly("Race 1", "Run 3");
        SeenTrace race = all.get(0);
        assertThat(SeeTrace.ofRun(desk.view(), race.run().id())).containsExactly(race);
        assertThat(SeeTrace.ofEngine(desk.view(), race.engine().id())).containsExactly(race);
        assertThat(SeeTrace.of(desk.view(), race.trace().id())).contains(race);
        assertThat(race.marks()).extracting(mark -> mark.kind()).contains(TraceMarkKind.MECHANICAL);
        assertThat(race.marks()).isSortedAccordingTo((one, other) -> one.at().compareTo(other.at()));
        assertThat(all.get(1).marks())
                .filteredOn(mark -> mark.kind() == TraceMarkKind.SENSOR_DROP)
                .hasSize(2);
    }

    @Test
    void a_run_after_the_day_looked_at_is_not_there_yet_and_a_struck_trace_no_more() {
        SampleTraces.race(desk);
        desk.lookAsOf(java.time.LocalDate.of(2026, 5, 2));
        assertThat(SeeTrace.all(desk.view())).isEmpty();
        desk.lookAsOf(null);
        desk.undo().orThrow();
        assertThat(SeeTrace.all(desk.view())).isEmpty();
    }

    @Test
    void bands_add_up_to_the_running_time() {
        SampleTraces.race(desk);
        SeenTrace race = SeeTrace.all(desk.view()).get(0);
        assertThat(race.speeds().total())
                .isEqualTo(race.trace().fact().running().millis());
    }

    /** Summed anew from the file, sample by sample, for several exponents; the edges of the bands bound it. */
    @Test
    void wear_by_speed_is_what_the_samples_add_up_to() {
        SampleTraces.race(desk);
        FileCells file = FileCells.of(LoggerFiles.mechanicalOverRev());
        double[] time = file.time();
        double[] rpm = file.column("Engine Speed [rpm]");
        int[] exponents = {100, 350, 650, 1100};
        PartKind[] kinds = {PartKind.RODS, PartKind.ROD_BOLTS, PartKind.VALVE_SPRINGS, PartKind.PISTONS};
        SeenTrace before = SeeTrace.all(desk.view()).get(0);
        assertThat(before.wear()).as("nobody wrote one").isEmpty();
        List<Entry<RevExponent>> written = new java.util.ArrayList<>();
        for (int i = 0; i < exponents.length; i++) {
            RevExponent wear = new RevExponent(
                    before.engine().fact().design(), kinds[i], new EngineSpeed(7500), exponents[i], "test");
            written.add(new Entry<>(SampleBooks.ids().next(), wear, Standing.IN_FORCE, null, 1));
        }
        desk.write("exponents", written).orThrow();

        List<PartWear> wear = SeeTrace.all(desk.view()).get(0).wear();
        assertThat(wear).hasSize(exponents.length);
        for (PartWear each : wear) {
            double sum = 0;
            for (int i = 1; i < time.length; i++) {
                double low = Math.max(500, Math.min(rpm[i - 1], rpm[i])); // it runs from 500 rpm on
                double high = Math.max(500, Math.max(rpm[i - 1], rpm[i]));
                sum += (time[i] - time[i - 1]) * mean(low / 7500, high / 7500, each.exponent());
            }
            double open = (each.most() - each.least()) / 1e3; // what the width of the bands leaves open
            assertThat(each.millis() / 1e3).as(each.toString()).isCloseTo(sum, within(0.1 * open));
            assertThat(sum).isBetween(each.least() / 1e3, each.most() / 1e3);
        }
    }

    /** Simpson's rule in many steps. */
    private static double mean(double low, double high, double exponent) {
        int steps = 20;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            int weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.pow(low + (high - low) * i / steps, exponent);
        }
        return sum / (3 * steps);
    }

    @Test
    void figures_between_two_times_are_those_of_the_file() throws IOException {
        SampleTraces.test(desk);
        KeptTrace kept = kept(SeeTrace.all(desk.view()).get(0));
        FileCells file = FileCells.of(LoggerFiles.falseDips());
        double[] time = file.time();
        double[] rpm = file.column("Engine Speed [rpm]");
        int from = 5_000;
        int until = 9_000;

        ChannelFigures found = kept.between(
                        kept.channel(ChannelKind.ENGINE_SPEED).orElseThrow(),
                        Math.round(time[from] * 1e6),
                        Math.round(time[until] * 1e6))
                .orElseThrow();
        double[] seen = Arrays.copyOfRange(rpm, from, until + 1);
        assertThat(found.samples()).isEqualTo(seen.length);
        assertThat(found.least()).isEqualTo(DoubleStream.of(seen).min().orElseThrow());
        assertThat(found.most()).isEqualTo(DoubleStream.of(seen).max().orElseThrow());
        assertThat(rpm[(int) Math.round(found.mostAt() / 1e6 * 20)]).isEqualTo(found.most());
        double mean = (DoubleStream.of(seen).sum() - (seen[0] + seen[seen.length - 1]) / 2) / (seen.length - 1);
        assertThat(found.mean()).isCloseTo(mean, within(1e-6 * mean)); // trapezoids of equal width
        assertThat(kept.between(kept.channels().get(0), kept.lasted() + 1, kept.lasted() + 2))
                .isEmpty();
    }

    @Test
    void the_value_at_a_time_is_the_last_one_before_it() throws IOException {
        SampleTraces.test(desk);
        KeptTrace kept = kept(SeeTrace.all(desk.view()).get(0));
        Wave wave = kept.wave(kept.channel(ChannelKind.OIL_PRESSURE).orElseThrow(), 0, kept.lasted(), 1 << 18);
        double[] oil = FileCells.of(LoggerFiles.falseDips()).column("Oil Press [bar]");
        assertThat(wave.fine()).isTrue();
        // with the first and the last sample of both drops of the sensor, and those beside them
        for (int i : new int[] {0, 9_321, 12_399, 12_400, 12_403, 12_404, 23_199, 23_200, 23_203, 23_204, 29_039}) {
            assertThat(wave.least(wave.at(i * 50_000L + 20_000)))
                    .as("sample " + i)
                    .isEqualTo(oil[i]);
        }
        assertThat(wave.at(-1)).isEqualTo(-1);
        assertThat(wave.at(kept.lasted() + 10_000_000)).isEqualTo(-1);
    }

    /**
     * Warming up and cooling a little are left open by rainflow, a half each (ASTM E1049-85, 5.4.4), when what swings
     * between is too small to count: the file is looked at for that first.
     */
    @Test
    void ranges_of_a_run_that_warms_up_and_cools_a_little_are_two_of_half_a_cycle() throws IOException {
        SampleTraces.race(desk);
        SeenTrace race = SeeTrace.all(desk.view()).get(0);
        List<ThermalRanges> ranges = kept(race).ranges(race.settings());
        FileCells file = FileCells.of(LoggerFiles.mechanicalOverRev());

        assertThat(ranges)
                .extracting(ThermalRanges::kind)
                .containsExactly(ChannelKind.WATER_TEMPERATURE, ChannelKind.OIL_TEMPERATURE);
        List<String> headings = List.of("Water Temp [\u00b0C]", "Oil Temp [\u00b0C]");
        for (int i = 0; i < headings.size(); i++) {
            double[] celsius = file.column(headings.get(i));
            double most = DoubleStream.of(celsius).max().orElseThrow();
            int top = 0;
            while (celsius[top] < most) {
                top++;
            }
            double[] cooling = Arrays.copyOfRange(celsius, top, celsius.length);
            double rise = most - celsius[0];
            double fall = most - DoubleStream.of(cooling).min().orElseThrow();
            ThermalRanges found = ranges.get(i);
            assertThat(furthestFall(Arrays.copyOf(celsius, top + 1)))
                    .as("warming up")
                    .isLessThan(found.least());
            assertThat(furthestRise(cooling)).as("cooling").isLessThan(found.least());
            assertThat(fall).isGreaterThan(found.least());

            assertThat(found.largest()).isCloseTo(rise, within(1e-9));
            assertThat(found.bands())
                    .containsExactly(
                            new ThermalRanges.Band((int) Math.floor(fall / 10) * 10, 0.5),
                            new ThermalRanges.Band((int) Math.floor(rise / 10) * 10, 0.5));
        }
    }

    /** The most it goes down after it was higher. */
    private static double furthestFall(double[] figures) {
        double most = figures[0];
        double fall = 0;
        for (double figure : figures) {
            most = Math.max(most, figure);
            fall = Math.max(fall, most - figure);
        }
        return fall;
    }

    private static double furthestRise(double[] figures) {
        return furthestFall(DoubleStream.of(figures).map(figure -> -figure).toArray());
    }

    @Test
    void without_samples_there_is_the_record_and_nothing_to_draw() {
        SampleTraces.bringIn(desk, "2026-03-21_57_run3.csv", LoggerFiles.falseDips(), false);
        Entry<Trace> trace = SeeTrace.all(desk.view()).get(0).trace();
        assertThat(SeeTrace.samples(desk.logbook(), trace.fact()).orThrow()).isEmpty();
    }
}
