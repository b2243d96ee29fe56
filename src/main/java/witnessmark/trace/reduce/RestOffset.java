package witnessmark.trace.reduce;

import org.jspecify.annotations.Nullable;
import witnessmark.trace.DefectLog;
import witnessmark.trace.result.Defect;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** What the oil pressure sensor says before the engine turns. */
final class RestOffset {
    private static final int FEWEST = 5;
    /** Slower than this the engine does not turn, rpm. */
    private static final double TURNING = 50;

    private final double most;
    private final double loaded;
    private double sum;
    private long samples;
    private boolean turned;
    private int fast;

    RestOffset(TraceSettings settings) {
        this.most = settings.get(TraceSetting.OFFSET);
        this.loaded = settings.get(TraceSetting.LOADED_FROM);
    }

    void sample(double bar, double rpm) {
        fast = rpm > loaded ? fast + 1 : 0;
        // A single high speed may be noise of the starter.
        turned |= !(rpm < TURNING) && (fast == 0 || fast > 1);
        if (!turned && rpm < TURNING) {
            sum += bar;
            samples++;
        }
    }

    @Nullable
    Double found(DefectLog defects, String heading, int part) {
        double mean = samples < FEWEST ? 0 : sum / samples;
        if (Math.abs(mean) <= most) {
            return null;
        }
        defects.whole(new Defect(DefectKind.OFFSET, heading, part, 0, 0, samples));
        return mean;
    }
}
