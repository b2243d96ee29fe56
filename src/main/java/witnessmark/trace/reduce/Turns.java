package witnessmark.trace.reduce;

import java.util.ArrayList;
import java.util.List;
import witnessmark.trace.result.TurningPoints;

/**
 * Turning points of a figure. Small ranges are left out; where there are too many points, larger ones too, until they
 * fit, as if the larger limit had held from the start.
 */
final class Turns {
    private static final int MOST = 4096;

    private double least;
    private List<Double> points = new ArrayList<>();
    private double newest;
    private double extreme;
    private double low;
    private double high;
    private boolean rising;
    private boolean any;
    private boolean moves;

    Turns(double least) {
        this.least = least;
    }

    void add(double value) {
        newest = value;
        if (!any) {
            any = true;
            extreme = value;
            low = value;
            high = value;
            points.add(value);
            return;
        }
        if (!moves) {
            low = Math.min(low, value);
            high = Math.max(high, value);
            if (high - low >= least) {
                begin(value);
            }
            return;
        }
        if (rising ? value >= extreme : value <= extreme) {
            extreme = value;
        } else if (Math.abs(value - extreme) >= least) {
            points.add(extreme);
            rising = !rising;
            extreme = value;
            if (points.size() >= MOST) {
                coarser();
            }
        }
    }

    /** The first range: what it began from may lie beyond the first value. */
    private void begin(double value) {
        moves = true;
        rising = value == high;
        double from = rising ? low : high;
        if (from != points.get(0)) {
            points.add(from);
        }
        extreme = value;
    }

    private void coarser() {
        List<Double> before = points;
        double going = extreme;
        double last = newest;
        while (points.size() >= MOST / 2) {
            least *= 2;
            points = new ArrayList<>();
            any = false;
            moves = false;
            before.forEach(this::add);
            add(going);
            add(last);
        }
    }

    TurningPoints found() {
        List<Double> all = new ArrayList<>(points);
        if (moves) {
            all.add(extreme);
            if (newest != extreme) {
                all.add(newest);
            }
        } else if (any && newest != points.get(0)) {
            all.add(newest);
        }
        return new TurningPoints(all, least);
    }
}
