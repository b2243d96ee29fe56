package witnessmark.trace.reduce;

import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** How far the car went, and laps. */
final class Driven {
    /** Metres in a microsecond at 1 km/h. */
    private static final double METRES = 1 / 3.6e6;

    private final long hole;
    private double metres;
    private double last = Double.NaN;
    private long lastAt;
    private double lastLap = Double.NaN;
    private int laps;

    Driven(TraceSettings settings) {
        this.hole = settings.micros(TraceSetting.GAP_BRIDGED);
    }

    void speed(long micros, double kilometresPerHour) {
        if (!Double.isNaN(last) && micros - lastAt <= hole) {
            metres += (last + kilometresPerHour) / 2 * (micros - lastAt) * METRES;
        }
        last = kilometresPerHour;
        lastAt = micros;
    }

    /** A number that rises with each lap, or a mark that goes up at its end. */
    void lap(double figure) {
        laps += figure > lastLap ? 1 : 0;
        lastLap = figure;
    }

    double metres() {
        return metres;
    }

    int laps() {
        return laps;
    }
}
