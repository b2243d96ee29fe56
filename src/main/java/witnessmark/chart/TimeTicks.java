package witnessmark.chart;

import java.util.ArrayList;
import java.util.List;

/** Where the ticks of a time of seconds and minutes stand: at round ones, and few of them. */
final class TimeTicks {
    private static final double[] STEPS = {
        0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14_400
    };

    private TimeTicks() {}

    /** @param most how many there is room for, 1 or more */
    static List<Double> of(double from, double to, int most) {
        double step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0 && (to - from) / STEPS[i] <= most; i--) {
            step = STEPS[i];
        }
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(from / step - 1e-9); i * step <= to + step * 1e-9; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }
}
