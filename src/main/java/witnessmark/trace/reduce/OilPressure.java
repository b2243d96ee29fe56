package witnessmark.trace.reduce;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.trace.DefectLog;
import witnessmark.trace.result.Defect;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Extremes;
import witnessmark.trace.result.OilTrend;
import witnessmark.trace.result.PressureDip;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/**
 * Oil pressure held against what the engine's speed asks for. Figures of exactly nothing wait until it is known whether
 * the pressure is back at once: then it was the sensor, and they are left out.
 */
final class OilPressure {
    private static final int MOST_WAITING = 4096;
    private static final int MOST_PIECES = 256;
    private static final long PIECE = 60_000_000;

    private record Sample(long micros, double bar, double rpm, double lateral) {}

    private final double floor;
    private final double above;
    private final long shortest;
    private final long drop;
    private final double dropFrom;
    private final long hole;
    private final String heading;
    private final int part;
    private final DefectLog defects;

    private final List<Sample> zeros = new ArrayList<>();
    private final List<PressureDip> dips = new ArrayList<>();
    private final Held all = new Held(Double.NaN);
    private final Held atSpeed = new Held(Double.NaN);
    private long dipCount;
    private double lastBar = Double.NaN;
    private long lastAt;
    private boolean lastAtSpeed;
    private @Nullable Sample lowest;
    private long dipFrom;

    private long piece = PIECE;
    private double[] sums = new double[MOST_PIECES];
    private long[] counts = new long[MOST_PIECES];
    private int pieces;

    OilPressure(TraceSettings settings, long step, String heading, int part, DefectLog defects) {
        this.floor = settings.get(TraceSetting.OIL_FLOOR) / 1000;
        this.above = settings.get(TraceSetting.OIL_FLOOR_ABOVE);
        this.shortest = settings.micros(TraceSetting.OIL_DIP_SHORTEST);
        this.drop = settings.micros(TraceSetting.SENSOR_DROP);
        this.dropFrom = settings.get(TraceSetting.SENSOR_DROP_FROM);
        this.hole = Math.round(step * settings.get(TraceSetting.GAP_STEPS));
        this.heading = heading;
        this.part = part;
        this.defects = defects;
    }

    /**
     * @param rpm the engine's speed then, NaN when not known
     * @param lateral acceleration then, NaN when not known
     */
    void sample(long micros, double bar, double rpm, double lateral) {
        Sample sample = new Sample(micros, bar, rpm, lateral);
        boolean waits = !zeros.isEmpty() || lastBar >= dropFrom;
        if (bar == 0 && waits && zeros.size() < MOST_WAITING && micros - lastAt <= drop + hole) {
            zeros.add(sample);
            return;
        }
        if (!zeros.isEmpty()) {
            Sample first = zeros.get(0);
            if (bar >= dropFrom && micros - first.micros <= drop) {
                defects.whole(new Defect(DefectKind.SENSOR_DROP, heading, part, first.micros, micros, zeros.size()));
                lastAt = zeros.get(zeros.size() - 1).micros; // the pressure went on meanwhile
                zeros.clear();
            } else {
                release();
            }
        }
        take(sample);
    }

    private void release() {
        zeros.forEach(this::take);
        zeros.clear();
    }

    private void take(Sample sample) {
        boolean next = !Double.isNaN(lastBar) && sample.micros - lastAt <= hole;
        boolean fast = sample.rpm > above;
        boolean low = fast && sample.bar < floor * sample.rpm;
        all.add(sample.micros, sample.bar, next);
        if (fast) {
            atSpeed.add(sample.micros, sample.bar, next && lastAtSpeed);
            trend(sample);
        }
        if (lowest != null && (!low || !next)) {
            close(next ? sample.micros : lastAt);
        }
        if (low) {
            if (lowest == null) {
                dipFrom = sample.micros;
                lowest = sample;
            } else if (sample.bar < lowest.bar) {
                lowest = sample;
            }
        }
        lastAtSpeed = fast;
        lastBar = sample.bar;
        lastAt = sample.micros;
    }

    private void close(long end) {
        Sample worst = lowest;
        lowest = null;
        if (worst == null || end - dipFrom <= shortest) {
            return;
        }
        dipCount++;
        if (dips.size() < Reduction.MOST_LISTED) {
            dips.add(new PressureDip(
                    dipFrom,
                    end - dipFrom,
                    worst.bar,
                    floor * worst.rpm,
                    worst.rpm,
                    Double.isNaN(worst.lateral) ? null : worst.lateral));
        }
    }

    private void trend(Sample sample) {
        while (sample.micros / piece >= MOST_PIECES) {
            for (int i = 0; i < MOST_PIECES; i++) {
                boolean low = i < MOST_PIECES / 2;
                sums[i] = low ? sums[2 * i] + sums[2 * i + 1] : 0;
                counts[i] = low ? counts[2 * i] + counts[2 * i + 1] : 0;
            }
            piece *= 2;
            pieces = (pieces + 1) / 2;
        }
        int at = (int) (sample.micros / piece);
        sums[at] += sample.bar;
        counts[at]++;
        pieces = Math.max(pieces, at + 1);
    }

    void end() {
        release();
        if (lowest != null) {
            close(lastAt);
        }
    }

    List<PressureDip> dips() {
        return dips;
    }

    long dipCount() {
        return dipCount;
    }

    Extremes extremes() {
        return all.found();
    }

    @Nullable
    Double lowestAtSpeed() {
        return atSpeed.found().lowest();
    }

    OilTrend trend() {
        List<Double> means = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            means.add(counts[i] == 0 ? Double.NaN : sums[i] / counts[i]);
        }
        return new OilTrend(piece, means);
    }
}
