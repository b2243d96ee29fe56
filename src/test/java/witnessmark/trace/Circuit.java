package witnessmark.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A lap of an invented circuit as a car of a given power drives it: speed and sideways acceleration metre by metre, as fast
 * as grip, power and brakes allow, and in the lap time asked for.
 */
final class Circuit {
    private static final double GRAVITY = 9.80665;
    private static final double POWER = 234; // W/kg
    private static final double BRAKES = 11; // m/s²
    private static final double SLOWEST = 14; // m/s

    private final int length;
    private final double[] bend;
    private double[] speed;
    private double[] times;

    private Circuit(int length, double[] bend) {
        this.length = length;
        this.bend = bend;
        this.speed = new double[length];
        this.times = new double[length + 1];
    }

    /**
     * @param length of a lap, m
     * @param corners how many
     * @param left the share of corners to the left
     * @param seed of their places and radii
     */
    static Circuit of(int length, int corners, double left, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] bend = new double[length];
        double room = (double) length / corners;
        for (int i = 0; i < corners; i++) {
            double radius = 24 + random.nextDouble() * random.nextDouble() * 130;
            int long1 = (int) Math.min(room * 0.6, radius * (0.7 + random.nextDouble() * 1.5));
            int from = (int) (i * room + random.nextDouble(room - long1));
            double sign = random.nextDouble() < left ? 1 : -1;
            for (int m = from; m < from + long1; m++) {
                double into = Math.min(m - from, from + long1 - 1 - m) / Math.max(8.0, long1 / 4.0);
                bend[m] = sign / radius * Math.min(1, 0.35 + into);
            }
        }
        return new Circuit(length, bend);
    }

    /** Drives it so that a lap takes so many seconds. */
    Circuit in(double seconds) {
        double low = 0.05;
        double high = 8;
        for (int i = 0; i < 60; i++) {
            double grip = (low + high) / 2;
            drive(grip);
            if (times[length] > seconds) {
                low = grip;
            } else {
                high = grip;
            }
        }
        double stretch = seconds / times[length];
        for (int m = 0; m < length; m++) {
            speed[m] /= stretch;
            times[m + 1] *= stretch;
        }
        return this;
    }

    private void drive(double grip) {
        double[] v = new double[2 * length];
        for (int m = 0; m < v.length; m++) {
            double curve = Math.abs(bend[m % length]);
            v[m] = Math.max(SLOWEST, curve == 0 ? 200 : Math.sqrt(1.3 * grip * GRAVITY / curve));
        }
        for (int m = 1; m < v.length; m++) {
            double power = Math.min(6.5, POWER / v[m - 1]) - 0.0011 * v[m - 1] * v[m - 1];
            v[m] = Math.min(v[m], Math.sqrt(Math.max(1, v[m - 1] * v[m - 1] + 2 * power)));
        }
        for (int m = v.length - 2; m >= 0; m--) {
            v[m] = Math.min(v[m], Math.sqrt(v[m + 1] * v[m + 1] + 2 * BRAKES));
        }
        for (int m = 0; m < length; m++) {
            speed[m] = m < length / 2 ? v[length + m] : v[m];
            times[m + 1] = times[m] + 1 / speed[m];
        }
    }

    /** Where on the lap the car is after a share of its time, m. */
    int metre(double share) {
        double time = share * times[length];
        int low = 0;
        int high = length - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (times[middle] <= time) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Speed at a place, m/s. */
    double speed(int metre) {
        return speed[Math.floorMod(metre, length)];
    }

    /** How speed changes there, m/s². */
    double gain(int metre) {
        double one = speed(metre - 3);
        double other = speed(metre + 3);
        return (other * other - one * one) / 12;
    }

    /** Sideways acceleration there, in g; left is above nothing. */
    double sideways(int metre) {
        double v = speed(metre);
        return Math.max(-2.2, Math.min(2.2, v * v * bend[Math.floorMod(metre, length)] / GRAVITY));
    }

    double fastest() {
        List<Double> all = new ArrayList<>();
        for (double each : speed) {
            all.add(each);
        }
        return all.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }
}
