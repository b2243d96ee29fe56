package witnessmark.fit;

import java.util.List;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.fit.result.Bounds;

/**
 * Whether a figure is unlike what is known of such a place, so that it is asked about: far from its limits, or apart from
 * its neighbours. It is never refused for that. The neighbours are judged by their median and by the median of their
 * distances from it (Hampel's identifier), so that one slip among them neither hides itself nor makes the others look
 * wrong. Pure.
 */
public final class Unlike {
    /** So many times the room between limits, or the spread of its neighbours, lies what nobody meant. */
    private static final long FAR = 10;
    /** A slip of the decimal point is at least so many times what is known, or that part of it. */
    private static final long SLIP = 3;
    /** Half-widths of measuring within which figures are alike, whatever they are of. Common practice, no source. */
    private static final long ALIKE = 4;
    /** Half-widths within which they are alike unless they are a slip of the decimal point. Common practice, no source. */
    private static final long NEAR = 12;

    private Unlike() {}

    /**
     * @param limits what the figure may be, and what is aimed at
     * @param neighbours figures of the same kind at other places of the engine
     */
    public static boolean is(MeasureKind kind, Bounds limits, List<Long> neighbours, long figure) {
        boolean freeBelow = limits.most() != null && limits.least() == null && figure >= 0;
        boolean closed = freeBelow || limits.most() != null && limits.least() != null;
        boolean meant = closed && limits.verdict(figure) != FitVerdict.OUTSIDE;
        return !meant && (farFromLimits(limits, figure) || apart(kind, neighbours, figure, freeBelow));
    }

    /** A limit on one side alone speaks of that side. */
    private static boolean farFromLimits(Bounds bounds, long figure) {
        List<Long> known = bounds.known();
        if (known.isEmpty()) {
            return false;
        }
        long low = known.get(0);
        long high = known.get(known.size() - 1);
        long room = high - low;
        if (room > 0) {
            long wide = Math.max(room, Math.abs(high) / 100);
            return figure < low - FAR * wide || figure > high + FAR * wide;
        }
        boolean atMost = bounds.most() != null && bounds.most().value() == high;
        return low > 0 && !atMost && figure < low / SLIP
                || Math.abs(figure) > Math.abs(high) * (bounds.limits() ? FAR : SLIP);
    }

    private static boolean apart(MeasureKind kind, List<Long> neighbours, long figure, boolean freeBelow) {
        if (neighbours.isEmpty()) {
            return false;
        }
        long middle = median(neighbours);
        if (freeBelow && figure < middle) {
            return false; // a flatter face is as likely
        }
        long distance = Math.abs(figure - middle);
        long spread = median(
                neighbours.stream().map(other -> Math.abs(other - middle)).toList());
        long halfWidth = halfWidth(kind, middle);
        boolean slipped = slipped(kind, middle, figure) && distance > Math.max(SLIP * spread, ALIKE * halfWidth);
        return slipped || neighbours.size() > 1 && distance > Math.max(FAR * spread, NEAR * halfWidth);
    }

    /** Figures of both signs lie near nothing as often as not. */
    private static boolean slipped(MeasureKind kind, long known, long figure) {
        boolean small = Math.abs(figure) < Math.abs(known) / SLIP;
        return Math.abs(figure) > Math.abs(known) * SLIP || small && !kind.sided();
    }

    /** How well it is measured; where nobody says, by what is measured. Common practice, no source. */
    private static long halfWidth(MeasureKind kind, long middle) {
        Long usual = Usual.halfWidth(kind);
        if (usual != null) {
            return usual;
        }
        return switch (kind.dimension()) {
            case LENGTH -> 20_000;
            case ROUGHNESS -> Math.abs(middle) / 8;
            case MASS -> Math.abs(middle) / 1_000;
            default -> Math.abs(middle) / 40;
        };
    }

    /** The middle one, of an even count the higher of the two in the middle. */
    private static long median(List<Long> figures) {
        return figures.stream().sorted().skip(figures.size() / 2).findFirst().orElseThrow();
    }
}
