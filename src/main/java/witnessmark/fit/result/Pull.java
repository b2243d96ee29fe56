package witnessmark.fit.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Joint;
import witnessmark.quantity.Pressure;

/**
 * What a group of tightened fasteners pulls with, and what that holds against.
 *
 * @param joint as it was tightened, by its last stage
 * @param way what the pull comes of, or null when it cannot be worked out
 * @param each pull of one fastener, or null when it cannot be worked out
 * @param scatter how far it may lie from that either way, as a share
 * @param inputs the figures it comes of, in the order they go in
 * @param proof newtons one of them takes without staying longer, or null when not written down
 * @param hold what the group holds against; null where it holds no gas, or something for it is missing
 * @param lacks what is missing
 * @param finding what it comes to
 */
public record Pull(
        Joint joint,
        @Nullable Way way,
        @Nullable Range each,
        double scatter,
        List<Input> inputs,
        @Nullable Integer proof,
        @Nullable Hold hold,
        List<Lack> lacks,
        Finding finding) {
    public Pull {
        inputs = List.copyOf(inputs);
        lacks = List.copyOf(lacks);
        if ((way == null) != (each == null)) {
            throw new IllegalArgumentException("a pull comes of something");
        }
    }

    /** What a pull comes of. */
    public enum Way {
        /** What the maker names for his way of tightening. */
        AS_THE_MAKER_SAYS,
        /** {@code T / (K·d)}. */
        TORQUE,
        /** {@code δ·E·A / l}. */
        STRETCH
    }

    /** What is missing for a pull, or for what it holds. */
    public enum Lack {
        FIGURES,
        VALUE,
        NUT_FACTOR,
        /** The nut factor holds for another lubricant. */
        LUBRICANT,
        SHANK,
        /** What an angle comes to only the maker can say. */
        MAKERS_PULL,
        COUNT,
        BORE
    }

    /** What it comes to, the worst first. */
    public enum Finding {
        /** Even at what is likely it holds less than the gas pushes. */
        OPENS,
        /** Even at what is likely it is pulled past what it takes without staying longer. */
        PAST_PROOF,
        /** At the low end of the method's scatter it holds less than the gas pushes. */
        MAY_OPEN,
        /** At the high end of the method's scatter it is pulled past its proof load. */
        MAY_PASS_PROOF,
        /** Nothing of the above. It is no leave to run. */
        NOTHING_AGAINST,
        /** Neither a proof load nor a gas load is known to hold it against. */
        NOTHING_TO_HOLD_AGAINST,
        NOT_KNOWN
    }

    /**
     * Newtons.
     *
     * @param least at the low end of the method's scatter
     * @param likely as worked out
     * @param most at the high end
     */
    public record Range(long least, long likely, long most) {
        public Range {
            if (least > likely || likely > most) {
                throw new IllegalArgumentException("a range goes up");
            }
        }

        /** So many times it. */
        public Range times(double factor) {
            return new Range(Math.round(least * factor), Math.round(likely * factor), Math.round(most * factor));
        }
    }

    /**
     * A figure the pull comes of.
     *
     * @param what which
     * @param value in its plain unit: newton metres, millimetres, gigapascals, newtons; the nut factor as it is
     * @param assumed nobody wrote it down, and the usual is taken
     */
    public record Input(What what, double value, boolean assumed) {
        public enum What {
            TORQUE,
            NUT_FACTOR,
            DIAMETER,
            STRETCH,
            MODULUS,
            SHANK_DIAMETER,
            SHANK_LENGTH,
            MAKERS_PULL
        }
    }

    /**
     * What the fasteners round one cylinder hold against.
     *
     * @param pressure highest gas pressure
     * @param assumed nobody wrote it down, and the usual is taken
     * @param bore what the gas pushes within: the gasket's as clamped, or the engine's
     * @param gas newtons it pushes with
     * @param count how many fasteners the engine has
     * @param cylinders how many cylinders share them
     * @param clamp pull that falls to one cylinder
     */
    public record Hold(
            Pressure pressure, boolean assumed, Given bore, long gas, int count, int cylinders, Range clamp) {}
}
