package witnessmark.fit.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasurePlace;

/**
 * A figure of a build sheet held against its limits.
 *
 * @param place what it is of, and where; of two sides the one that decides
 * @param value the figure, or null when something it needs was not measured
 * @param margin expanded uncertainty (k = 2) in the figure's own parts, or null when it is not known
 * @param bounds what it may be
 * @param verdict how it stands
 * @param terms the column that adds up to it, or to the volume it is a ratio of
 * @param missing what is needed and was not measured
 */
public record Check(
        MeasurePlace place,
        @Nullable Long value,
        @Nullable Long margin,
        Bounds bounds,
        FitVerdict verdict,
        List<Term> terms,
        List<MeasurePlace> missing) {
    public Check {
        terms = List.copyOf(terms);
        missing = List.copyOf(missing);
        if ((value == null) != (verdict == FitVerdict.NOT_MEASURED)) {
            throw new IllegalArgumentException("a check has a figure unless something was not measured");
        }
    }

    /** Whether a limit lies so near that the measuring cannot tell on which side the figure is. */
    public boolean tooNearToTell() {
        Long room = value == null ? null : bounds.room(value);
        return room != null && margin != null && Math.abs(room) < margin;
    }

    /** Whether there is a column to be shown: more than one line, or one that was brought to 20 °C. */
    public boolean addsUp() {
        return value != null
                && (terms.size() > 1
                        || terms.stream()
                                .map(term -> term.given().toTwenty())
                                .anyMatch(brought -> brought != null && !brought.lacks()));
    }

    /** Whether it is outside its limits, or has limits and lacks a figure to hold against them. */
    public boolean leavesOpen() {
        return verdict == FitVerdict.OUTSIDE || verdict == FitVerdict.NOT_MEASURED && bounds.limits();
    }

    /** Whether some of it was not measured but taken as designed or as usual. */
    public boolean restsOnDesign() {
        return terms.stream()
                .anyMatch(term -> term.given().basis() == Basis.AS_DESIGNED
                        || term.given().basis() == Basis.ASSUMED);
    }
}
