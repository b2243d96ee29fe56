package witnessmark.trace.result;

import java.util.Arrays;

/**
 * A stretch of a channel held to be drawn: its samples, or the least and most of each 64 or 4096 of them where there are
 * very many. No extreme is lost. Not changed once it is made; for any thread.
 */
public final class Wave {
    /** A hole is a time of more than so many usual steps without a figure, as in {@code TraceSetting.GAP_STEPS}. */
    private static final double HOLE = 2.5;

    private final boolean fine;
    private final long[] micros;
    private final double[] least;
    private final double[] most;

    private Wave(boolean fine, long[] micros, double[] least, double[] most) {
        this.fine = fine;
        this.micros = micros;
        this.least = least;
        this.most = most;
    }

    /** Whether each point is a sample; else it stands for several. */
    public boolean fine() {
        return fine;
    }

    /** Points, NaN among them. */
    public int size() {
        return micros.length;
    }

    /** The time of a point: of its first sample. */
    public long micros(int point) {
        return micros[point];
    }

    /** The least of the samples of a point, NaN where it has no figure. */
    public double least(int point) {
        return least[point];
    }

    public double most(int point) {
        return most[point];
    }

    /** The first point that is not before a time; {@link #size} when all are. */
    public int from(long time) {
        int at = Arrays.binarySearch(micros, time);
        return at < 0 ? -at - 1 : at;
    }

    /** The point in force at a time: the last that is not after it, unless a hole lies between. −1 where there is none. */
    public int at(long time) {
        int next = from(time);
        if (next < micros.length && micros[next] == time) {
            return next;
        }
        int before = next - 1;
        boolean last = next == micros.length;
        if (before < 0 || last || isHole(before)) {
            return before >= 0 && time - micros[before] <= HOLE * usualStep() ? before : -1;
        }
        return before;
    }

    /** Whether a hole lies between a point and the next. */
    public boolean isHole(int point) {
        return point + 1 < micros.length && micros[point + 1] - micros[point] > HOLE * usualStep();
    }

    private double usualStep() {
        int steps = micros.length - 1;
        return steps < 1 ? 0 : (micros[steps] - micros[0]) / (double) steps;
    }

    /**
     * Least and most in equal pieces of a stretch of time.
     *
     * @param pieces pixels, 1 or more
     */
    public Envelope envelope(long from, long until, int pieces) {
        Envelope envelope = new Envelope(from, until, pieces);
        for (int i = from(from); i < micros.length && micros[i] <= until; i++) {
            envelope.add(micros[i], least[i], most[i]);
        }
        return envelope;
    }

    /** Takes points one after the other. */
    public static final class Filling {
        private static final int START = 1024;
        private long[] micros = new long[START];
        private double[] least = new double[START];
        private double[] most = new double[START];
        private int count;
        private boolean fine = true;

        public void sample(long time, double value) {
            add(time, value, value);
        }

        /** The least and most of samples from a time on. */
        public void several(long time, double low, double high) {
            fine = false;
            add(time, low, high);
        }

        private void add(long time, double low, double high) {
            if (count == micros.length) {
                micros = Arrays.copyOf(micros, 2 * count);
                least = Arrays.copyOf(least, 2 * count);
                most = Arrays.copyOf(most, 2 * count);
            }
            micros[count] = time;
            least[count] = low;
            most[count++] = high;
        }

        public Wave done() {
            return new Wave(
                    fine, Arrays.copyOf(micros, count), Arrays.copyOf(least, count), Arrays.copyOf(most, count));
        }
    }
}
