package witnessmark.fit.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasurePlace;

/**
 * A figure that goes into a check.
 *
 * @param place of what, and where
 * @param value whole parts of its dimension; a size at 20 °C where it could be brought there
 * @param basis what it rests on
 * @param source who says it where it was not measured; empty otherwise
 * @param toTwenty what brought a measured size to 20 °C, or what was lacking; null where there is nothing to bring
 */
public record Given(
        MeasurePlace place,
        long value,
        Basis basis,
        String source,
        @Nullable ToTwenty toTwenty) {
    /** A figure that nothing has to be brought to 20 °C of. */
    public Given(MeasurePlace place, long value, Basis basis, String source) {
        this(place, value, basis, source, null);
    }

    /** The same as it was read. */
    public Given asRead() {
        return toTwenty == null ? this : new Given(place, value - toTwenty.by(), basis, source);
    }
}
