package witnessmark.exchange;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import witnessmark.domain.ReadingKind;

/**
 * A figure that was read, with its unit: {@code 291 N}, {@code 0.25 mm}, {@code 4.5 %}. One without is a whole number of
 * what the logbook keeps it in, as folders were written once; one so small that it was meant in the unit written now is
 * not read.
 */
enum ReadingText implements FigureText {
    PERCENT("%", 100),
    KILOPASCAL("kPa", 1_000),
    NEWTON("N", 1_000),
    MILLIMETRE("mm", 1_000_000),
    BRINELL("HBW", 10),
    MILLIGRAM_PER_KILOGRAM("mg/kg", 1_000);

    private static final Pattern FIGURE = Pattern.compile("(-?[0-9]{1,19}(?:\\.[0-9]{1,9})?)\\s*(.*)");
    private static final BigDecimal PASCALS_OF_A_BAR = BigDecimal.valueOf(100_000);

    private final String unit;
    private final BigDecimal kept;

    ReadingText(String unit, long kept) {
        this.unit = unit;
        this.kept = BigDecimal.valueOf(kept);
    }

    /**
     * What figures of a unit are written in.
     *
     * @throws IllegalArgumentException if it is a grade
     */
    static ReadingText of(ReadingKind.Unit unit) {
        return switch (unit) {
            case HUNDREDTH_OF_PERCENT -> PERCENT;
            case PASCAL -> KILOPASCAL;
            case MILLINEWTON -> NEWTON;
            case NANOMETRE -> MILLIMETRE;
            case TENTH_OF_BRINELL -> BRINELL;
            case MILLIGRAM_PER_TONNE -> MILLIGRAM_PER_KILOGRAM;
            case GRADE -> throw new IllegalArgumentException("a grade is no figure");
        };
    }

    @Override
    public String of(long figure) {
        BigDecimal written = BigDecimal.valueOf(figure).divide(kept);
        return (written.signum() == 0 ? "0" : written.stripTrailingZeros().toPlainString()) + " " + unit;
    }

    @Override
    public long read(String text) {
        Matcher parts = FIGURE.matcher(text.strip());
        if (!parts.matches()) {
            throw new IllegalArgumentException(text);
        }
        BigDecimal figure = new BigDecimal(parts.group(1));
        return figure.multiply(factor(figure, parts.group(2).strip())).longValueExact();
    }

    private BigDecimal factor(BigDecimal figure, String named) {
        if (named.equalsIgnoreCase(unit)) {
            return kept;
        }
        if (this == KILOPASCAL && named.equalsIgnoreCase("bar")) {
            return PASCALS_OF_A_BAR;
        }
        if (!named.isEmpty() || figure.signum() != 0 && figure.abs().compareTo(kept) < 0) {
            throw new IllegalArgumentException(named);
        }
        return BigDecimal.ONE;
    }

    @Override
    public String form() {
        return switch (this) {
            case PERCENT -> "4.5 %";
            case KILOPASCAL -> "430 kPa";
            case NEWTON -> "291 N";
            case MILLIMETRE -> "0.25 mm";
            case BRINELL -> "110 HBW";
            case MILLIGRAM_PER_KILOGRAM -> "12 mg/kg";
        };
    }
}
