package witnessmark.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.reduce.Reducer;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Excursion;
import witnessmark.trace.result.HeatCycles;
import witnessmark.trace.result.PressureDip;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** State machines that see each sample once, against searches through the whole arrays. */
class ReductionsTest {
    private static final int SEEDS = 60;
    private static final double LIMIT = 8000;
    private static final double BACK = 7900;
    private static final TraceSettings SETTINGS =
            TraceSettings.usual().with(TraceSetting.OVER_REV_ABOVE, LIMIT).with(TraceSetting.HIGH_SPEED_FROM, 7500);

    @Test
    void revolutions_and_time_above_a_speed_are_exact_integrals() throws IOException {
        // Checks A3: exact integral of a piecewise-linear function, rational arithmetic.
        byte[] bytes = Files.readAllBytes(Path.of("src/test/resources/trace/A3_revs_trace.csv"));
        Reduction found = Reads.of(bytes, SETTINGS).only();
        assertThat(found.speed().revolutions()).isCloseTo(4786.666667, within(4786.666667e-9));
        assertThat(found.speed().high() / 1000.0).isCloseTo(9.690252101, within(0.0005)); // whole milliseconds
        assertThat(found.speed().running()).isEqualTo(60_000);
        assertThat(found.lasted()).isEqualTo(60_000_000);
    }

    @Test
    void over_revs_are_those_a_search_finds() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int rate = new int[] {10, 20, 50, 100}[(int) (seed % 4)];
            double[] rpm = wander(random, 3000, 7950, 60_000.0 / rate / 20, 8600);
            double[] throttle = new double[rpm.length];
            for (int i = 0; i < rpm.length; i++) {
                throttle[i] = random.nextInt(4) == 0 ? 0 : (i / 40) % 2 == 0 ? 100 : 4;
            }
            Reduction found = reduced(rate, List.of(ChannelKind.ENGINE_SPEED, ChannelKind.THROTTLE), rpm, throttle);
            List<Excursion> expected = overRevs(rate, rpm, throttle);
            assertThat(found.overRevs()).as("seed " + seed).isEqualTo(expected);
            assertThat(found.overRevCount()).isEqualTo(expected.size());
        }
    }

    @Test
    void dips_are_those_a_search_finds() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int rate = new int[] {10, 20, 50}[(int) (seed % 3)];
            double[] rpm = wander(random, 3000, 7500, 400, 8000);
            double[] bar = new double[rpm.length];
            boolean low = false;
            for (int i = 0; i < bar.length; i++) {
                low ^= random.nextInt(12) == 0;
                bar[i] = Math.rint((low ? 1.5 + random.nextDouble(1.5) : 4.6) * 100) / 100;
            }
            Reduction found = reduced(rate, List.of(ChannelKind.ENGINE_SPEED, ChannelKind.OIL_PRESSURE), rpm, bar);
            assertThat(found.dips()).as("seed " + seed).isEqualTo(dips(rate, rpm, bar));
        }
    }

    @Test
    void heat_cycles_are_those_a_search_finds_and_traces_put_together_come_to_the_whole() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double[] water = new double[3000];
            double at = 20 + random.nextInt(70);
            double slope = 0;
            for (int i = 0; i < water.length; i++) {
                if (random.nextInt(60) == 0) {
                    slope = random.nextDouble(-1.2, 1.2);
                }
                at = Math.max(15, Math.min(110, at + slope));
                water[i] = Math.rint(at * 10) / 10;
            }
            HeatCycles whole = heat(water);
            assertThat(whole.ifArmed()).as("seed " + seed).isEqualTo(cycles(water, true));
            assertThat(whole.ifNot()).as("seed " + seed).isEqualTo(cycles(water, false));
            for (int piece : new int[] {water.length / 3, water.length / 2}) {
                // Cut where it is cold, so that no minute of heat is cut in two.
                int cut = piece;
                while (cut < water.length - 2 && water[cut] > 70) {
                    cut++;
                }
                HeatCycles first = heat(java.util.Arrays.copyOf(water, cut));
                HeatCycles rest = heat(java.util.Arrays.copyOfRange(water, cut, water.length));
                assertThat(first.then(rest)).as("seed " + seed).isEqualTo(whole);
            }
        }
    }

    private static HeatCycles heat(double[] water) {
        return reduced(1, List.of(ChannelKind.WATER_TEMPERATURE), water).heat();
    }

    @Test
    void the_pieces_in_which_bytes_come_change_nothing() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Story story = Story.of(seed, 20, 6);
            Dialect dialect = Dialect.values()[(int) (seed % Dialect.values().length)];
            byte[] bytes = dialect.bytes(story, seed);
            Reads.Read whole = Reads.of(bytes, SETTINGS);
            SplittableRandom random = new SplittableRandom(seed);
            int most = seed % 3 == 0 ? 1 : 1 + random.nextInt(200);
            Reads.Read pieces = Reads.of(
                            Reads.inPieces(bytes, () -> 1 + random.nextInt(most)),
                            whole.recognised(),
                            whole.recognised().form(),
                            SETTINGS)
                    .orThrow();
            assertThat(pieces).as("seed " + seed).isEqualTo(whole);
        }
    }

    private static double[] wander(SplittableRandom random, double low, double high, double step, double most) {
        double[] values = new double[1500];
        double at = low;
        double target = high;
        for (int i = 0; i < values.length; i++) {
            if (Math.abs(target - at) < step) {
                target = low + random.nextDouble() * (most - low);
            }
            at += Math.signum(target - at) * step * random.nextDouble() + random.nextInt(-60, 61);
            values[i] = Math.rint(Math.max(900, Math.min(most, at)));
        }
        return values;
    }

    static Reduction reduced(int rate, List<ChannelKind> kinds, double[]... channels) {
        Reducer reducer = new Reducer(SETTINGS);
        List<ColumnForm> columns = new ArrayList<>();
        List<Long> steps = new ArrayList<>();
        for (ChannelKind kind : kinds) {
            columns.add(ColumnForm.other(kind.code()).as(kind));
            steps.add(1_000_000L / rate);
        }
        reducer.begin(new Layout(columns, steps));
        double[] row = new double[channels.length];
        for (int i = 0; i < channels[0].length; i++) {
            for (int c = 0; c < channels.length; c++) {
                row[c] = channels[c][i];
            }
            reducer.sample(i * 1_000_000L / rate, row);
        }
        reducer.end();
        return reducer.parts().get(0);
    }

    private static List<Excursion> overRevs(int rate, double[] rpm, double[] throttle) {
        long step = 1_000_000L / rate;
        List<Excursion> found = new ArrayList<>();
        long lastEnd = Long.MIN_VALUE / 2;
        int i = 0;
        while (i < rpm.length) {
            if (rpm[i] <= LIMIT) {
                i++;
                continue;
            }
            int end = i;
            while (end + 1 < rpm.length && rpm[end + 1] >= BACK) {
                end++;
            }
            long samples = 0;
            int lastAbove = i;
            for (int k = i; k <= end; k++) {
                samples += rpm[k] > LIMIT ? 1 : 0;
                lastAbove = rpm[k] > LIMIT ? k : lastAbove;
            }
            int top = i + 1;
            for (int k = i + 2; k <= end; k++) {
                top = Math.min(rpm[k - 1], rpm[k]) > Math.min(rpm[top - 1], rpm[top]) ? k : top;
            }
            if (samples >= 2 && samples * step >= 60_000) {
                double most = throttle[top];
                for (int k = i; k < top; k++) {
                    most = rpm[k] > LIMIT ? Math.max(most, throttle[k]) : most;
                }
                Excursion one = new Excursion(
                        i * step,
                        samples * step,
                        samples,
                        Math.min(rpm[top - 1], rpm[top]),
                        most <= 10 ? Excursion.How.MECHANICAL : Excursion.How.LIMITER,
                        null,
                        most);
                if (i * step - lastEnd < 500_000) {
                    Excursion before = found.remove(found.size() - 1);
                    Excursion higher = one.peak() > before.peak() ? one : before;
                    one = new Excursion(
                            before.at(),
                            before.lasted() + one.lasted(),
                            before.samples() + one.samples(),
                            higher.peak(),
                            higher.how(),
                            null,
                            higher.throttle());
                }
                found.add(one);
                lastEnd = (lastAbove + 1) * step;
            }
            i = end + 1;
        }
        return found;
    }

    private static List<PressureDip> dips(int rate, double[] rpm, double[] bar) {
        long step = 1_000_000L / rate;
        List<PressureDip> found = new ArrayList<>();
        for (int i = 0; i < rpm.length; i++) {
            if (!low(rpm[i], bar[i]) || i > 0 && low(rpm[i - 1], bar[i - 1])) {
                continue;
            }
            int end = i;
            int worst = i;
            while (end < rpm.length && low(rpm[end], bar[end])) {
                worst = bar[end] < bar[worst] ? end : worst;
                end++;
            }
            long lasted = (Math.min(end, rpm.length - 1) - i) * step;
            if (lasted > 200_000) {
                found.add(new PressureDip(i * step, lasted, bar[worst], 0.5 / 1000 * rpm[worst], rpm[worst], null));
            }
        }
        return found;
    }

    private static boolean low(double rpm, double bar) {
        return rpm > 4000 && bar < 0.5 / 1000 * rpm;
    }

    /** At 1 Hz: a cycle counts at a sample with all of the sixty before it hot, if it was cold since the last. */
    private static int cycles(double[] water, boolean armedBefore) {
        boolean armed = armedBefore;
        int count = 0;
        for (int i = 0; i < water.length; i++) {
            armed |= water[i] < 40;
            boolean hot = i >= 60;
            for (int k = i; hot && k >= i - 60; k--) {
                hot = water[k] > 70;
            }
            if (hot && armed) {
                count++;
                armed = false;
            }
        }
        return count;
    }
}
