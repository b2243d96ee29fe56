package witnessmark.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Figures as shown: thousands set apart by a thin space, minus U+2212, halves rounded away from zero. */
final class Figures {
    private static final char THIN_SPACE = '\u2009';
    private static final char MINUS = '\u2212';

    private final char mark;

    Figures(Locale locale) {
        this.mark = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    }

    String whole(long figure) {
        return fixed(BigDecimal.valueOf(figure), 0);
    }

    /** The figure with exactly that many decimals. */
    String fixed(BigDecimal figure, int decimals) {
        return plain(figure.setScale(decimals, RoundingMode.HALF_UP));
    }

    /** The figure with as many decimals as it needs, within bounds. */
    String between(BigDecimal figure, int fewest, int most) {
        BigDecimal rounded = figure.setScale(most, RoundingMode.HALF_UP);
        return plain(rounded.setScale(Math.max(fewest, needed(rounded)), RoundingMode.UNNECESSARY));
    }

    /** How many decimals a figure needs. */
    static int needed(BigDecimal figure) {
        return figure.signum() == 0
                ? 0
                : Math.max(0, figure.stripTrailingZeros().scale());
    }

    private String plain(BigDecimal rounded) {
        StringBuilder shown = new StringBuilder(rounded.abs().toPlainString());
        int point = shown.indexOf(".");
        if (point >= 0) {
            shown.setCharAt(point, mark);
        }
        for (int at = (point < 0 ? shown.length() : point) - 3; at > 0; at -= 3) {
            shown.insert(at, THIN_SPACE);
        }
        return rounded.signum() < 0 ? shown.insert(0, MINUS).toString() : shown.toString();
    }
}
