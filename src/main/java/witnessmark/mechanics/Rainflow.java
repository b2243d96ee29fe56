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

    private final Counted counted;
    private double[] reversals = new double[ROOM];
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
        goesOn();
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a history is of finite numbers, not " + value);
        }
        if (open == 0) {
            push(value);
            newest = value;
        } else if (value != newest) {
            turned(value);
        }
    }

    /**
     * The same as each value by itself.
     *
     * @throws IllegalArgumentException if one is no finite number; those before it stand
     * @throws IllegalStateException once finished
     */
    public void add(double[] values, int from, int to) {
        for (int i = from; i < to; i++) {
            double value = values[i];
            if (open > 0 && (rising ? value >= newest : value <= newest) && Math.abs(value) <= Double.MAX_VALUE) {
                newest = value; // goes on the same way; by far the most values do
            } else {
                add(value);
            }
        }
        goesOn();
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
            reversal(newest);
        }
        for (int i = 1; i < open; i++) {
            tell(i, 0.5);
        }
        open = 0;
    }

    private void turned(double value) {
        boolean up = value > newest;
        if (up != rising && newest != reversals[open - 1]) {
            reversal(newest);
        }
        rising = up;
        newest = value;
    }

    /** Steps 2 to 5 of the standard, X the newest range and Y the one before. */
    private void reversal(double value) {
        push(value);
        while (open >= 3
                && Math.abs(reversals[open - 1] - reversals[open - 2])
                        >= Math.abs(reversals[open - 2] - reversals[open - 3])) {
            if (open == 3) { // Y holds the starting point
                tell(1, 0.5);
                reversals[0] = reversals[1];
                reversals[1] = reversals[2];
                open = 2;
            } else {
                tell(open - 2, 1);
                reversals[open - 3] = reversals[open - 1];
                open -= 2;
            }
        }
    }

    private void tell(int end, double count) {
        double a = reversals[end - 1];
        double b = reversals[end];
        counted.range(Math.abs(b - a), a / 2 + b / 2, count);
    }

    private void push(double value) {
        if (open == reversals.length) {
            reversals = Arrays.copyOf(reversals, 2 * open);
        }
        reversals[open++] = value;
    }

    private void goesOn() {
        if (finished) {
            throw new IllegalStateException("the history has ended");
        }
    }
}
