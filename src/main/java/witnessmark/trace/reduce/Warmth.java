package witnessmark.trace.reduce;

import witnessmark.trace.DefectLog;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Extremes;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** A temperature without the jumps that no temperature makes. */
final class Warmth {
    private final double jump;
    private final double least;
    private final long hole;
    private final Held held;
    private final String heading;
    private final int part;
    private final DefectLog defects;
    private double last = Double.NaN;
    private long lastAt;

    /** Uses temperatures that were accepted. */
    interface Use {
        void temperature(long micros, double celsius);
    }

    Warmth(TraceSettings settings, TraceSetting limit, long step, String heading, int part, DefectLog defects) {
        this.jump = settings.get(TraceSetting.JUMP);
        this.least = settings.get(TraceSetting.JUMP_LEAST);
        this.hole = Math.max(
                settings.micros(TraceSetting.GAP_BRIDGED), Math.round(step * settings.get(TraceSetting.GAP_STEPS)));
        this.held = new Held(settings.get(limit));
        this.heading = heading;
        this.part = part;
        this.defects = defects;
    }

    void sample(long micros, double celsius, long row, Use use) {
        if (!Double.isNaN(last)) {
            double change = Math.abs(celsius - last);
            if (change > Math.max(least, jump * (micros - lastAt) / 1e6)) {
                defects.sample(DefectKind.SENSOR_JUMP, heading, part, micros, row);
                return;
            }
        }
        held.add(micros, celsius, !Double.isNaN(last) && micros - lastAt <= hole);
        last = celsius;
        lastAt = micros;
        use.temperature(micros, celsius);
    }

    Extremes extremes() {
        return held.found();
    }
}
