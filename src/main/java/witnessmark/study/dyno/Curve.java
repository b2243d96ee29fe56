package witnessmark.study.dyno;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import witnessmark.statistics.Repeated;
import witnessmark.study.result.CurvePoint;
import witnessmark.study.result.DynoPull;
import witnessmark.study.result.PullPoint;

/** The mean of pulls, and how far single pulls lie from it. Between two speeds of a pull torque is a straight line. */
final class Curve {
    private final List<TreeMap<Double, Double>> pulls;

    /** @param pulls without points that are not corrected */
    private Curve(List<TreeMap<Double, Double>> pulls) {
        this.pulls = pulls;
    }

    static Curve of(List<DynoPull> pulls) {
        List<TreeMap<Double, Double>> torques = new ArrayList<>();
        for (DynoPull pull : pulls) {
            TreeMap<Double, Double> torque = new TreeMap<>();
            for (PullPoint point : pull.points()) {
                if (!Double.isNaN(point.corrected())) {
                    torque.put(point.rpm(), point.corrected());
                }
            }
            if (!torque.isEmpty()) {
                torques.add(torque);
            }
        }
        return new Curve(torques);
    }

    /** The mean at every speed that any pull names, over the pulls that reach it. */
    List<CurvePoint> mean() {
        TreeSet<Double> speeds = new TreeSet<>();
        pulls.forEach(pull -> speeds.addAll(pull.keySet()));
        List<CurvePoint> mean = new ArrayList<>();
        for (double rpm : speeds) {
            double[] torques = at(rpm);
            double sum = 0;
            for (double torque : torques) {
                sum += torque;
            }
            double torque = sum / torques.length;
            mean.add(new CurvePoint(rpm, torque, new PullPoint(rpm, torque, torque).power(), torques.length));
        }
        return mean;
    }

    /** Deviation of one pull from the mean of its speed, a share of it; empty when no speed was reached twice. */
    Optional<Repeated> repeats() {
        List<double[]> shares = new ArrayList<>();
        int most = 0;
        for (CurvePoint point : mean()) {
            double[] torques = at(point.rpm());
            if (torques.length > 1 && point.torque() > 0) {
                double[] share = new double[torques.length];
                for (int i = 0; i < share.length; i++) {
                    share[i] = torques[i] / point.torque();
                }
                shares.add(share);
                most = Math.max(most, torques.length);
            }
        }
        if (shares.isEmpty()) {
            return Optional.empty();
        }
        // A pull that lies high does so at all its speeds, so the speeds add no knowledge: pulls alone are counted.
        return Optional.of(new Repeated(Repeated.within(shares).deviation(), most - 1));
    }

    int pulls() {
        return pulls.size();
    }

    private double[] at(double rpm) {
        return pulls.stream()
                .filter(pull -> pull.firstKey() <= rpm && rpm <= pull.lastKey())
                .mapToDouble(pull -> at(pull, rpm))
                .toArray();
    }

    private static double at(TreeMap<Double, Double> torque, double rpm) {
        var below = torque.floorEntry(rpm);
        var above = torque.ceilingEntry(rpm);
        double span = above.getKey() - below.getKey();
        return span == 0
                ? below.getValue()
                : below.getValue() + (above.getValue() - below.getValue()) * (rpm - below.getKey()) / span;
    }

    /** Torque of a mean curve at a speed it reaches. */
    static double torque(List<CurvePoint> mean, double rpm) {
        TreeMap<Double, Double> torque = new TreeMap<>();
        mean.forEach(point -> torque.put(point.rpm(), point.torque()));
        return at(torque, rpm);
    }

    /** Where it is highest; empty for no curve. */
    static Optional<CurvePoint> highest(List<CurvePoint> mean, ToDoubleFunction<CurvePoint> of) {
        return mean.stream().max(Comparator.comparingDouble(of));
    }
}
