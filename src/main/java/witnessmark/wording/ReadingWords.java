package witnessmark.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Objects;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.quantity.Length;
import witnessmark.quantity.Pressure;

/** Figures and grades of readings as shown, each figure from a whole number of its kind's unit. */
public final class ReadingWords {
    private static final int HUNDREDTHS = 2;
    private static final int THOUSANDTHS = 3;

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    /** Shows figures in the language and units of the measures. */
    public ReadingWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** What was read: {@code 14 %}, {@code 266 N}, {@code few specks}. */
    public String of(Reading reading) {
        return reading.grade() != null
                ? records.word(reading.grade())
                : figure(reading.kind(), Objects.requireNonNull(reading.value()));
    }

    /**
     * {@code 4.5 %}, {@code 12.4 bar}, {@code 291 N}, {@code 0.25 mm}, {@code 104 HB}, {@code 12 ppm}.
     *
     * @throws IllegalArgumentException if the kind is graded
     */
    public String figure(ReadingKind kind, long value) {
        return figure(kind.unit(), value);
    }

    /**
     * As {@link #figure(ReadingKind, long)}, of anything in that unit.
     *
     * @throws IllegalArgumentException if it is a grade
     */
    public String figure(ReadingKind.Unit unit, long value) {
        return switch (unit) {
            case HUNDREDTH_OF_PERCENT -> with(unit, value, HUNDREDTHS);
            case PASCAL -> measures.pressure(new Pressure(value));
            case MILLINEWTON, MILLIGRAM_PER_TONNE -> with(unit, value, THOUSANDTHS);
            case NANOMETRE -> measures.length(new Length(value));
            case TENTH_OF_BRINELL -> with(unit, value, 1);
            case GRADE -> throw new IllegalArgumentException("a grade is no figure");
        };
    }

    /**
     * The same without its unit, for figures in a row.
     *
     * @throws IllegalArgumentException if the kind is graded
     */
    public String bare(ReadingKind kind, long value) {
        return switch (kind.unit()) {
            case HUNDREDTH_OF_PERCENT -> bare(value, HUNDREDTHS);
            case PASCAL -> measures.bare(new Pressure(value));
            case MILLINEWTON, MILLIGRAM_PER_TONNE -> bare(value, THOUSANDTHS);
            case NANOMETRE -> measures.bare(new Length(value));
            case TENTH_OF_BRINELL -> bare(value, 1);
            case GRADE -> throw new IllegalArgumentException("a grade is no figure");
        };
    }

    /** The sign of the unit in which such figures are typed: {@code %}, {@code bar}, {@code N}. */
    public String sign(ReadingKind.Unit unit) {
        return texts.get("measures.reading." + unit.name().toLowerCase(Locale.ROOT));
    }

    /** A share from hundredths of a percent: {@code 8 %}, {@code 7.5 %}. */
    public String percent(long hundredths) {
        return with(ReadingKind.Unit.HUNDREDTH_OF_PERCENT, hundredths, HUNDREDTHS);
    }

    /** A share of two figures in whole percent, rounded half up: {@code 9 %}. */
    public String percent(long part, long whole) {
        BigDecimal share =
                BigDecimal.valueOf(part).movePointRight(2).divide(BigDecimal.valueOf(whole), 0, RoundingMode.HALF_UP);
        return texts.get("measures.figure", measures.number(share, 0), sign(ReadingKind.Unit.HUNDREDTH_OF_PERCENT));
    }

    private String with(ReadingKind.Unit unit, long value, int decimals) {
        return texts.get("measures.figure", bare(value, decimals), sign(unit));
    }

    private String bare(long value, int decimals) {
        BigDecimal figure = BigDecimal.valueOf(value, decimals).stripTrailingZeros();
        return measures.number(figure, Math.max(0, figure.scale()));
    }
}
