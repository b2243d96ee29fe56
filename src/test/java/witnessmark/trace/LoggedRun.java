package witnessmark.trace;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import witnessmark.domain.ChannelKind;

/**
 * What a logger writes of one run: warming up, laps, and back, so that it comes to the figures the run is written down with,
 * to the last digit: running, under load and at high speed to the millisecond, distance to the metre, the highest speed and
 * temperatures and the lowest hot oil pressure as they are printed. The logger begins and ends with the engine.
 */
final class LoggedRun {
    static final int LOADED = 3000;
    static final int HIGH = 7500;
    static final int OIL_FROM = 5000;

    private static final double[] TOPS = {0.42, 0.56, 0.70, 0.85, 1.01};

    /**
     * The figures of a run.
     *
     * @param rate samples a second
     * @param running seconds, a whole number
     * @param before of those warming up and waiting before the laps, seconds
     * @param track of those on the track
     * @param loaded of those under load; a little less than on the track
     * @param high of those at high speed
     * @param metres driven
     * @param highest rpm
     * @param water highest, °C
     * @param oil highest, °C
     * @param pressure lowest hot at speed, bar
     * @param cold water when it begins, °C
     */
    record Figures(
            int rate,
            int running,
            int before,
            int track,
            int loaded,
            int high,
            int laps,
            int metres,
            int highest,
            double water,
            double oil,
            double pressure,
            double cold) {}

    final Figures is;
    final int samples;
    /** The laps, by sample; the first sample under load and the last. */
    final int first;

    final int last;
    /** Samples whose engine speed is not in the file, or is none. */
    final boolean[] lost;

    /** Samples whose oil pressure is no pressure. */
    final boolean[] unpressed;

    private final Circuit circuit;
    private final SplittableRandom random;
    final double[] rpm;
    final double[] throttle;
    final double[] speed;
    final double[] sideways;
    final double[] pressure;
    final double[] oil;
    final double[] water;
    final int[] gear;
    final int[] lap;

    LoggedRun(Figures is, Circuit circuit, long seed) {
        this.is = is;
        this.circuit = circuit.in((double) is.track / is.laps);
        this.random = new SplittableRandom(seed);
        this.samples = is.running * is.rate + 1;
        int slow = (is.track - is.loaded) * is.rate * 2 / 3;
        this.first = is.before * is.rate + slow;
        this.last = first + is.loaded * is.rate - 1;
        this.lost = new boolean[samples];
        this.unpressed = new boolean[samples];
        this.rpm = new double[samples];
        this.throttle = new double[samples];
        this.speed = new double[samples];
        this.sideways = new double[samples];
        this.pressure = new double[samples];
        this.oil = new double[samples];
        this.water = new double[samples];
        this.gear = new int[samples];
        this.lap = new int[samples];
        drive();
        wait(0, first);
        wait(last + 1, samples);
        stretch();
        warm(water, is.cold, is.water, 170, 0.7);
        warm(oil, is.cold + (is.cold > 50 ? 12 : 1), is.oil, 330, 1.2);
    }

    /** Laps: gears, throttle and engine speed follow the car's. */
    private void drive() {
        double top = circuit.fastest();
        int in = 1;
        double turning = 4200;
        double hand = 0;
        for (int i = first; i <= last; i++) {
            hand += (random.nextDouble(-0.02, 0.02) - hand) * 0.6 / is.rate; // nobody drives a lap twice
            double laps = (double) (i - first) / (last - first + 1) * is.laps;
            lap[i] = 1 + (int) laps;
            int metre = circuit.metre(laps - (int) laps);
            double ramp = Math.min(1, 0.55 + (i - first) / (8.0 * is.rate));
            double v = circuit.speed(metre) * ramp * (1 + 4 * hand);
            double gain = circuit.gain(metre);
            double share = v / top;
            if (share > TOPS[in - 1] * 0.985 && in < TOPS.length) {
                in++;
                turning *= 0.97;
            } else if (in > 1 && gain < -1 && share < TOPS[in - 2] * 0.86) {
                in--;
            } else if (in > 1 && share < TOPS[in - 1] * 0.55) {
                in--;
            }
            double wanted = 8250 * share / TOPS[in - 1];
            turning += (wanted - turning) * Math.min(1, 14.0 / is.rate);
            rpm[i] = turning + random.nextInt(-7, 8);
            gear[i] = in;
            speed[i] = v * 3.6;
            throttle[i] = gain > 0.6 ? 100 : gain < -1.5 ? 0 : 22 + 6 * gain + random.nextInt(0, 12) * 0.5;
            sideways[i] = circuit.sideways(metre) * ramp * ramp * (1 + 9 * hand) + random.nextInt(-3, 4) * 0.01;
        }
    }

    /** Idling, and now and then a little more: never under load. */
    private void wait(int from, int until) {
        double turning = 1250;
        double target = 1250;
        for (int i = from; i < until; i++) {
            if (random.nextInt(6 * is.rate) == 0) {
                target = random.nextInt(3) == 0 ? 1900 + random.nextInt(700) : 1150 + random.nextInt(150);
            }
            turning += (target - turning) * Math.min(1, 5.0 / is.rate);
            boolean rolls = from == 0 ? i > until - 25 * is.rate : i < from + 30 * is.rate && i < samples - 4 * is.rate;
            rpm[i] = Math.min(2850, (rolls ? 1900 + 25 * Math.min(20, (i % (9.0 * is.rate)) / is.rate) : turning))
                    + random.nextInt(-6, 7);
            throttle[i] = rolls ? 8 : turning > 1500 ? 4.5 : 1.5;
            gear[i] = rolls ? 1 : 0;
            speed[i] = rolls ? 19 + random.nextInt(-3, 4) * 0.1 : 0;
            sideways[i] = random.nextInt(-1, 2) * 0.01;
            lap[i] = from == 0 ? 0 : is.laps;
        }
    }

    /** Maps engine speed so that as much of it lies above high speed as is wanted, and none above the highest. */
    private void stretch() {
        double[] sorted = new double[last - first + 1];
        System.arraycopy(rpm, first, sorted, 0, sorted.length);
        Arrays.sort(sorted);
        double high = sorted[Math.max(0, sorted.length - is.high * is.rate)];
        double most = sorted[sorted.length - 1];
        int from = (int) Math.min(high - 500, 6200);
        for (int i = first; i <= last; i++) {
            double raw = rpm[i];
            double made = raw >= high
                    ? HIGH + (raw - high) / (most - high) * (is.highest - HIGH)
                    : raw > from ? from + (raw - from) / (high - from) * (HIGH - from) : raw;
            rpm[i] = Math.rint(Math.max(LOADED + 120 + i % 7, Math.min(is.highest, made)));
        }
        for (int i = 0; i < samples; i++) {
            rpm[i] = Math.rint(rpm[i]);
            speed[i] = Math.rint(speed[i] * 10) / 10;
        }
        // Half a step before the first sample under load, and half a step after the last.
        rpm[first - 1] = LOADED - 50;
        rpm[first] = LOADED + 50;
        rpm[last] = LOADED + 50;
        rpm[last + 1] = LOADED - 50;
    }

    /** Warms up as bodies do, breathes with the laps, and is read once a second. */
    private void warm(double[] into, double from, double to, double seconds, double breath) {
        int steps = (samples + is.rate - 1) / is.rate;
        double[] each = new double[steps];
        double most = 0;
        double heat = 0;
        for (int s = 0; s < steps; s++) {
            int at = Math.min(samples - 1, s * is.rate);
            boolean laps = at >= first && at <= last;
            heat += ((laps ? 1 : 0.84) - heat) / (laps ? seconds * 0.6 : seconds);
            each[s] = heat
                    + (laps ? breath * 0.008 * Math.sin(s * 2 * Math.PI * is.laps / is.track) : 0)
                    + random.nextDouble(-0.001, 0.001);
            most = Math.max(most, each[s]);
        }
        for (int i = 0; i < samples; i++) {
            into[i] = Math.rint((from + (to - from) * Math.max(0, each[i / is.rate]) / most) * 10) / 10;
        }
    }

    /** Makes the run come to its figures, whatever is done to it before. */
    LoggedRun settle(Consumer<LoggedRun> done) {
        peak();
        done.accept(this);
        new Fitting(this).high();
        new Fitting(this).distance();
        press();
        return this;
    }

    /** The highest speed is held for two samples, at the end of the straight where it is highest. */
    private void peak() {
        int at = first + 1;
        for (int i = first + 1; i < last; i++) {
            at = !lost[i] && !lost[i + 1] && rpm[i] > rpm[at] ? i : at;
        }
        rpm[at] = is.highest;
        rpm[at + 1] = is.highest;
    }

    /** Oil pressure follows engine speed, is more while the oil is cold, and gives way in long turns. */
    private void press() {
        double turning = 0;
        for (int i = 0; i < samples; i++) {
            turning = Math.abs(sideways[i]) > 0.9
                    ? Math.min(1, turning + 0.35 / is.rate)
                    : Math.max(0, turning - 1.2 / is.rate);
            double thick = Math.max(0, (92 - oil[i]) / 92);
            double bar = 5 * (1 - Math.exp(-rpm[i] / 2600)) * (1 + 0.3 * thick) - 0.22 * turning;
            boolean again = i % 2 == 1 && i > 0; // read ten times a second, or half as often as the rest
            pressure[i] =
                    again ? pressure[i - 1] : Math.rint(Math.min(6.4, bar + random.nextInt(-1, 2) * 0.01) * 100) / 100;
        }
        new Fitting(this).pressure();
    }

    double get(int sample, ChannelKind kind) {
        return switch (kind) {
            case ENGINE_SPEED -> rpm[sample];
            case THROTTLE -> throttle[sample];
            case CAR_SPEED -> speed[sample];
            case LATERAL -> sideways[sample];
            case OIL_PRESSURE -> pressure[sample];
            case OIL_TEMPERATURE -> oil[sample];
            case WATER_TEMPERATURE -> water[sample];
            case GEAR -> gear[sample];
            case LAP -> lap[sample];
            default -> throw new IllegalArgumentException(kind.code());
        };
    }
}
