package witnessmark.fit.result;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The fit of an engine at speed.
 *
 * @param hot each side of each cylinder that can be worked out, warmed up
 * @param cold the same where somebody revs it before it is warm
 * @param redLine revolutions a minute, or null when not written down
 * @param seen the highest it is known to have turned, or null when nothing was read
 * @param lacks what is missing; what it would close by is in none of the figures
 * @param taken what nobody wrote down and is taken as usual
 * @param conditions how warm and of what it is taken to be, warmed up
 * @param margin what is to be left between crown and head at speed, in millimetres, or null when nobody said
 */
public record SpeedAnswer(
        List<AtSpeed> hot,
        List<AtSpeed> cold,
        @Nullable Integer redLine,
        @Nullable Integer seen,
        Set<Lack> lacks,
        Set<Taken> taken,
        Conditions conditions,
        @Nullable Double margin) {
    /** A usual chart goes so far past the red line. */
    private static final double PAST = 1.05;

    public SpeedAnswer {
        hot = List.copyOf(hot);
        cold = List.copyOf(cold);
        lacks = Set.copyOf(lacks);
        taken = Set.copyOf(taken);
    }

    /** What is missing. */
    public enum Lack {
        RED_LINE,
        STROKE,
        ROD_LENGTH,
        DECK_CLEARANCE,
        GASKET,
        PIN_CLEARANCE,
        BIG_END_CLEARANCE,
        MAIN_CLEARANCE,
        MASSES,
        COMPRESSION_HEIGHT,
        MAIN_SPACING,
        MAIN_JOURNAL
    }

    /** What is taken as usual. */
    public enum Taken {
        /** No section and no stretch of the rod: 0.10 ± 0.05 mm at the red line. */
        STRETCH,
        /** How the deck was read: part of the clearances may be in the figure already. */
        HOW_IT_STOOD,
        TEMPERATURES
    }

    /** How it comes out. */
    public enum Verdict {
        /** By what is likely, crown and head meet. */
        TOUCHES,
        /** It cannot be excluded that they do, or less is left than is wanted. */
        NEAR,
        /** As much as is wanted is left, by what is likely. */
        ROOM,
        /** Nobody said how much is to be left. */
        NO_MARGIN,
        NOT_KNOWN
    }

    /** How the nearest side comes out at the speed it is judged at. */
    public Verdict verdict() {
        Integer rpm = judgedAt();
        return rpm == null
                ? Verdict.NOT_KNOWN
                : nearest(rpm).map(side -> verdict(side.headAt(rpm))).orElse(Verdict.NOT_KNOWN);
    }

    private Verdict verdict(AtSpeed.Band left) {
        if (left.likely() <= 0) {
            return Verdict.TOUCHES;
        }
        if (left.low() <= 0 || margin != null && left.likely() < margin) {
            return Verdict.NEAR;
        }
        return margin == null ? Verdict.NO_MARGIN : Verdict.ROOM;
    }

    /** The speed it is judged at: the highest it has seen where that is above the red line. */
    public @Nullable Integer judgedAt() {
        return redLine == null ? seen : seen == null ? redLine : Integer.valueOf(Math.max(redLine, seen));
    }

    /** The highest speed worth looking at: what it has seen, or a little past the red line, whichever is more. */
    public double top() {
        double past = redLine == null ? 0 : redLine * PAST;
        return Math.max(past, seen == null ? 0 : seen);
    }

    /** The side with the least room to the head at a speed, of both cases. */
    public Optional<AtSpeed> nearest(double rpm) {
        return Stream.concat(hot.stream(), cold.stream())
                .min(Comparator.comparingDouble(side -> side.headAt(rpm).likely()));
    }

    /** Whether a side is of the cold case. */
    public boolean isCold(AtSpeed side) {
        return !hot.contains(side);
    }
}
