package witnessmark.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Rainflow counting of a history (ASTM E1049-85, 5.4.4), value by value as it comes. What has closed is told at once and
 * forgotten; kept are only the reversals of ranges still open, each smaller than the one before.
 *
 * <p>The first and the last value count as reversals, as in the standard's figure 6; a value between two others and a
 * value said again are none. Not for several threads.
 */
public final class Rainflow {
    private static final int ROOM = 64;
    /** Values looked at for where they turn before what closes with that is counted: two short loops are the faster. */
    private static final int PIECE = 1024;

    private final Counted counted;
    private double[] reversals = new double[ROOM];
    /** From the reversal before up to each; none before the first, and nothing is as wide as that. */
    private double[] ranges = new double[ROOM];

    private final double[] turns = new double[PIECE];
    private final double[] single = new double[1];
    private int open;
    /** The newest value: a reversal once the next one turns back. */
    private double newest = Double.NaN;

    private boolean rising;
    private boolean finished;

    /** Is told each range as it closes. */
    @FunctionalInterface
    public interface Counted {
        /**
         * @param range between peak and valley, above 0
         * @param mean halfway between them
         * @param count 1 for a whole cycle, 0.5 for a half
         */
        void range(double range, double mean, double count);
    }

    /** One counted range; see {@link Counted}. */
    public record Cycle(double range, double mean, double count) {
        /** Half the range. */
        public double amplitude() {
            return range / 2;
        }
    }

    public Rainflow(Counted counted) {
        this.counted = counted;
    }

    /** All ranges of a whole history, in the order in which they close. */
    public static List<Cycle> count(double... history) {
        List<Cycle> cycles = new ArrayList<>();
        Rainflow rainflow = new Rainflow((range, mean, count) -> cycles.add(new Cycle(range, mean, count)));
        rainflow.add(history, 0, history.length);
        rainflow.finish();
        return cycles;
    }

    /**
     * @throws IllegalArgumentException if the value is no finite number; what came before stands
     * @throws IllegalStateException once finished
     */
    public void add(double value) {
        single[0] = value;
        add(single, 0, 1);
    }

    /**
     * The same as each value by itself.
     *
     * @throws IllegalArgumentException if one is no finite number; those before it stand
     * @throws IllegalStateException once finished
     */
    public void add(double[] values, int from, int to) {
        goesOn();
        int at = from;
        while (at < to) {
            if (open == 0) {
                at = first(values, at);
            } else {
                at = piece(values, at, Math.min(to, at + PIECE));
            }
        }
    }

    /**
     * The history has ended: what is still open is told as halves.
     *
     * @throws IllegalStateException if it was finished before
     */
    public void finish() {
        goesOn();
        finished = true;
        if (open > 0 && newest != reversals[open - 1]) {
            turns[0] = newest;
            close(1);
        }
        for (int i = 1; i < open; i++) {
            tell(reversals[i - 1], reversals[i], ranges[i], 0.5);
        }
        open = 0;
    }

    private int first(double[] values, int at) {
        newest = finite(values[at]);
        reversals[0] = newest;
        ranges[0] = Double.NaN;
        open = 1;
        return at + 1;
    }

    /** Takes values up to an end, or to one that is no finite number. */
    private int piece(double[] values, int from, int to) {
        int at = from;
        int count = 0;
        double last = newest;
        boolean up = rising;
        if (open == 1 && last == reversals[0]) { // nothing has changed yet: which way it goes is not known
            while (at < to && values[at] == last) {
                at++;
            }
            up = at < to && values[at] > last;
        }
        for (; at < to; at++) {
            double value = values[at];
            if (!(Math.abs(value) <= Double.MAX_VALUE)) {
                break;
            }
            if (up ? value < last : value > last) {
                turns[count++] = last;
                up = !up;
            }
            last = value;
        }
        newest = last;
        rising = up;
        close(count);
        if (at < to) {
            finite(values[at]);
        }
        return at;
    }

    /** Steps 2 to 5 of the standard for each of so many reversals, X the newest range and Y the one before. */
    private void close(int count) {
        int last = open - 1;
        double top = reversals[last];
        double y = ranges[last];
        for (int i = 0; i < count; i++) {
            double value = turns[i];
            double x = Math.abs(value - top);
            while (x >= y) {
                double before = reversals[last - 1];
                if (last == 1) { // Y holds the starting point
                    tell(before, top, y, 0.5);
                    reversals[0] = top;
                    last = 0;
                    break;
                }
                tell(before, top, y, 1);
                last -= 2;
                top = reversals[last];
                y = ranges[last];
                x = Math.abs(value - top);
            }
            if (++last == reversals.length) {
                reversals = Arrays.copyOf(reversals, 2 * last);
                ranges = Arrays.copyOf(ranges, 2 * last);
            }
            reversals[last] = value;
            ranges[last] = x;
            top = value;
            y = x;
        }
        open = last + 1;
    }

    private void tell(double a, double b, double range, double count) {
        counted.range(range, a / 2 + b / 2, count);
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a history is of finite numbers, not " + value);
        }
        return value;
    }

    private void goesOn() {
        if (finished) {
            throw new IllegalStateException("the history has ended");
        }
    }
}
