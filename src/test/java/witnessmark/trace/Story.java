package witnessmark.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;
import witnessmark.domain.ChannelKind;

/** What a car did, sample by sample, with figures of so many decimals as a logger writes. Invented. */
public final class Story {
    public static final List<ChannelKind> KINDS = List.of(
            ChannelKind.ENGINE_SPEED,
            ChannelKind.THROTTLE,
            ChannelKind.CAR_SPEED,
            ChannelKind.LATERAL,
            ChannelKind.OIL_PRESSURE,
            ChannelKind.OIL_TEMPERATURE,
            ChannelKind.WATER_TEMPERATURE,
            ChannelKind.GEAR,
            ChannelKind.LAP);

    private static final int[] PLACES = {0, 1, 1, 2, 2, 1, 1, 0, 0};

    public final int rate;
    public final int samples;
    public final double[][] values;

    private Story(int rate, int samples) {
        this.rate = rate;
        this.samples = samples;
        this.values = new double[KINDS.size()][samples];
    }

    /** A short run as the seed has it, of some seconds. */
    public static Story of(long seed, int seconds) {
        int[] rates = {10, 20, 25, 50, 100};
        return of(seed, rates[Math.floorMod(seed, 5)], seconds);
    }

    public static Story of(long seed, int rate, int seconds) {
        SplittableRandom random = new SplittableRandom(seed);
        Story story = new Story(rate, rate * seconds);
        double rpm = 900 + random.nextInt(200);
        double target = rpm;
        double slope = 0;
        double water = 55 + random.nextInt(30);
        double oil = 60 + random.nextInt(30);
        double speed = 0;
        int lap = 1;
        for (int i = 0; i < story.samples; i++) {
            if ((target - rpm) * slope <= 0) {
                target = 900 + random.nextInt(7400);
                slope = (target > rpm ? 1 : -1) * (800 + random.nextInt(4000)) / (double) rate;
            }
            rpm = Math.max(850, rpm + slope + random.nextInt(-20, 21));
            speed = Math.max(0, Math.min(230, speed + (rpm > 4000 ? 8.0 : -6.0) / rate));
            water = Math.min(95, water + 0.3 / rate);
            oil = Math.min(110, oil + 0.25 / rate);
            lap += i > 0 && i % (rate * 20) == 0 ? 1 : 0;
            story.set(i, ChannelKind.ENGINE_SPEED, rpm);
            story.set(i, ChannelKind.THROTTLE, slope > 0 ? 95 + random.nextDouble(5) : random.nextDouble(8));
            story.set(i, ChannelKind.CAR_SPEED, speed);
            story.set(i, ChannelKind.LATERAL, random.nextDouble(-1.6, 1.6));
            story.set(i, ChannelKind.OIL_PRESSURE, 1.4 + rpm * 0.00045 + random.nextDouble(0.2));
            story.set(i, ChannelKind.OIL_TEMPERATURE, oil);
            story.set(i, ChannelKind.WATER_TEMPERATURE, water + random.nextDouble(0.5));
            story.set(i, ChannelKind.GEAR, 1 + (int) Math.min(4, speed / 45));
            story.set(i, ChannelKind.LAP, lap);
        }
        return story;
    }

    public double get(int sample, ChannelKind kind) {
        return values[KINDS.indexOf(kind)][sample];
    }

    public void set(int sample, ChannelKind kind, double value) {
        int at = KINDS.indexOf(kind);
        double scale = Math.pow(10, PLACES[at]);
        values[at][sample] = Math.rint(value * scale) / scale;
    }

    public static int places(ChannelKind kind) {
        return PLACES[KINDS.indexOf(kind)];
    }

    /** Microseconds of a sample. */
    public long micros(int sample) {
        return sample * 1_000_000L / rate;
    }

    /** A channel's own figures. */
    public double[] channel(ChannelKind kind) {
        return values[KINDS.indexOf(kind)];
    }

    /** A plain file of it: comma, point, seconds, units in the headings. */
    public String csv() {
        return Dialect.COMMA.text(this, 0);
    }

    /** The rows as cells, time first, for those who spoil them. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < samples; i++) {
            List<String> row = new ArrayList<>();
            row.add(Dialect.plain(micros(i) / 1e6, 3));
            for (ChannelKind kind : KINDS) {
                row.add(Dialect.plain(get(i, kind), places(kind)));
            }
            rows.add(row);
        }
        return rows;
    }

    /** A plain file of rows in place of its own. */
    String joined(List<List<String>> rows) {
        String csv = csv();
        StringBuilder text = new StringBuilder(csv.substring(0, csv.indexOf('\n') + 1));
        rows.forEach(row -> text.append(String.join(",", row)).append('\n'));
        return text.toString();
    }

    /** A plain file of it after something was done to each row. */
    String changed(BiConsumer<Integer, List<String>> change) {
        List<List<String>> rows = rows();
        for (int i = 0; i < rows.size(); i++) {
            change.accept(i, rows.get(i));
        }
        return joined(rows);
    }
}
