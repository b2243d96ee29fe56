package witnessmark.exchange;

import java.math.BigDecimal;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.typed.MeasureUnit;

/**
 * A figure of a build sheet with its unit: {@code 0.195 mm}, {@code 32.7 cc}, {@code 106.2 °}. It is read in the unit
 * written here and no other, exactly.
 *
 * @param dimension what it measures
 */
record MeasureText(Dimension dimension) implements FigureText {
    @Override
    public String of(long figure) {
        return MeasureUnit.text(dimension, figure);
    }

    @Override
    public long read(String text) {
        String plain = text.strip();
        if (!plain.endsWith(sign())) {
            throw new IllegalArgumentException(text);
        }
        String figure = plain.substring(0, plain.length() - sign().length()).strip();
        return new BigDecimal(figure).movePointRight(dimension.decimals()).longValueExact();
    }

    @Override
    public String form() {
        return of(1000);
    }

    private String sign() {
        return MeasureUnit.shown(dimension).sign();
    }
}
