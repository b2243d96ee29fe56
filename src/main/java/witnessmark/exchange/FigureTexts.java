package witnessmark.exchange;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Facts;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.Figure;
import witnessmark.domain.image.FigureUnits;
import witnessmark.domain.image.RecordType;
import witnessmark.quantity.Counter;

/** How figures stand in a file whose unit the rest of their row says. */
final class FigureTexts {
    /** A grade has no figure; one that is there all the same is read, so that the row is refused for it. */
    private static final FigureText PLAIN = new FigureText() {
        @Override
        public String of(long figure) {
            return Long.toString(figure);
        }

        @Override
        public long read(String text) {
            return Long.parseLong(text);
        }

        @Override
        public String form() {
            return "";
        }
    };

    private FigureTexts() {}

    /**
     * How a part of a row that names its unit is written.
     *
     * @param component for which {@link FigureUnits#has} holds
     * @param values the row's value of each of its components
     * @return null while it is not known what the row counts or reads
     */
    static @Nullable FigureText of(
            RecordType<?> type, Component component, Function<Component, @Nullable Object> values, Facts facts) {
        Figure.In unit = FigureUnits.of(type, component, values, facts);
        if (unit instanceof Figure.Counted counted) {
            return new AmountText(type.kind(), counted.counter());
        }
        if (unit instanceof Figure.Months) {
            return new AmountText(type.kind(), Counter.AGE);
        }
        if (unit instanceof Figure.Measured measured) {
            return new MeasureText(measured.dimension());
        }
        if (unit instanceof Figure.Read read) {
            return read.unit() == ReadingKind.Unit.GRADE ? PLAIN : ReadingText.of(read.unit());
        }
        return null;
    }
}
