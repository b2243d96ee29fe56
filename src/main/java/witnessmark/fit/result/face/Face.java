package witnessmark.fit.result.face;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import witnessmark.domain.FaceHole;
import witnessmark.domain.FaceOutline;
import witnessmark.domain.HoleKind;
import witnessmark.fit.result.face.FacePlace.Kind;
import witnessmark.fit.result.face.FacePlace.Side;
import witnessmark.quantity.Length;

/**
 * The joint face of a design, in the frame that head, gasket and block share.
 *
 * @param outline its edges
 * @param holes everything that is open in it
 */
public record Face(FaceOutline outline, List<FaceHole> holes) {
    public Face {
        holes = List.copyOf(holes);
    }

    /** Its bores, from the front end. */
    public List<FaceHole> bores() {
        return holes.stream()
                .filter(hole -> hole.kind() == HoleKind.BORE)
                .sorted(Comparator.comparing(FaceHole::x))
                .toList();
    }

    /** Whether a place lies on it. */
    public boolean holds(Length x, Length y) {
        return x.nanometres() >= 0
                && y.nanometres() >= 0
                && x.compareTo(outline.length()) <= 0
                && y.compareTo(outline.width()) <= 0;
    }

    /** The same place as somebody counts it who takes the exhaust edge for the inlet edge. */
    public Length mirrored(Length y) {
        return new Length(outline.width().nanometres() - y.nanometres());
    }

    /** The least distance of neighbouring bores along the face; none with fewer than two. */
    public OptionalLong pitch() {
        List<FaceHole> bores = bores();
        OptionalLong least = OptionalLong.empty();
        for (int i = 1; i < bores.size(); i++) {
            long apart = bores.get(i).x().nanometres() - bores.get(i - 1).x().nanometres();
            least = OptionalLong.of(Math.min(apart, least.orElse(Long.MAX_VALUE)));
        }
        return least;
    }

    /** A measured place with the name of where it lies. */
    public LowPoint point(Length x, Length y, Length depth) {
        return new LowPoint(x, y, depth, place(x, y));
    }

    /**
     * Where a place lies: between two bores in the middle half of what lies between their centres, else at the nearer
     * cylinder; in the middle within half a bore's radius of its centre line.
     */
    public FacePlace place(Length x, Length y) {
        List<FaceHole> bores = bores();
        if (bores.isEmpty()) {
            long middle = outline.width().nanometres() / 2;
            return new FacePlace(Kind.FACE, 0, side(y.nanometres() - middle, middle / 4));
        }
        FaceHole near = bores.stream()
                .min(Comparator.comparingLong(bore -> Math.abs(bore.x().nanometres() - x.nanometres())))
                .orElseThrow();
        Side side = side(y.nanometres() - near.y().nanometres(), near.diameter().nanometres() / 4);
        for (int i = 1; i < bores.size(); i++) {
            long from = bores.get(i - 1).x().nanometres();
            long apart = bores.get(i).x().nanometres() - from;
            long in = x.nanometres() - from;
            if (4 * in > apart && 4 * in < 3 * apart) {
                return new FacePlace(Kind.BETWEEN, number(bores.get(i - 1)), side);
            }
        }
        return new FacePlace(Kind.CYLINDER, number(near), side);
    }

    private static int number(FaceHole bore) {
        return bore.number() == null ? 0 : bore.number();
    }

    private static Side side(long off, long middle) {
        return Math.abs(off) <= middle ? Side.MIDDLE : off > 0 ? Side.EXHAUST : Side.INLET;
    }

    /** What was read at a place, or nearest to it within a quarter of a bore pitch. */
    public Optional<LowPoint> nearest(LowPoint here, List<LowPoint> read) {
        double near = pitch().orElse(outline.length().nanometres() / 4) / 4.0;
        return read.stream()
                .filter(other -> other.from(here) <= near)
                .min(Comparator.comparingDouble(other -> other.from(here)));
    }
}
