package witnessmark.quantity.typed;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import witnessmark.quantity.Dimension;

/**
 * One figure, or the two ends of a range: {@code 95 N·m}, {@code 0.141 to 0.146 mm}, {@code 0.141–0.146 mm}. A first end
 * without a unit is in that of the second.
 *
 * @param low whole parts of the unit's dimension
 * @param high not below it
 */
public record TypedRange(long low, long high) {
    private static final Pattern BETWEEN = Pattern.compile("\\s+to\\s+|\\s*[–—]\\s*|\\s+-\\s+");

    /** @param own the unit of bare figures */
    public static Typed<TypedRange> read(String text, MeasureUnit own) {
        String[] ends = BETWEEN.split(text.strip(), -1);
        Optional<TypedMeasure> high =
                TypedMeasure.read(ends[ends.length - 1], own, false).only();
        Optional<TypedMeasure> low = high.filter(end -> ends.length <= 2)
                .flatMap(end -> TypedMeasure.read(ends[0], ends.length == 1 ? own : end.unit(), false)
                        .only())
                .filter(start -> start.parts() <= high.orElseThrow().parts());
        return low.isPresent()
                ? new Typed.Read<>(
                        new TypedRange(low.get().parts(), high.orElseThrow().parts()), text)
                : new Typed.Unreadable<>(List.of(
                        own.dimension() == Dimension.LENGTH ? "0.141 to 0.146 " + own.sign() : "95 " + own.sign()));
    }
}
