package witnessmark.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.quantity.Length;
import witnessmark.quantity.Pressure;

/** Figures and grades of readings as texts, each with its unit. */
public final class ReadingWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

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
     * A figure with its unit.
     *
     * @param value in the kind's unit; of a graded kind there is none
     */
    public String figure(ReadingKind kind, long value) {
        return switch (kind.unit()) {
            case HUNDREDTH_OF_PERCENT -> percent(value);
            case PASCAL -> measures.pressure(new Pressure(value));
            case MILLINEWTON -> texts.get("measures.newton", plain(value, 1000));
            case NANOMETRE -> measures.length(new Length(value));
            case TENTH_OF_BRINELL -> texts.get("measures.brinell", plain(value, 10));
            case MILLIGRAM_PER_TONNE -> texts.get("measures.ppm", plain(value, 1000));
            case GRADE -> throw new IllegalArgumentException("a graded kind has no figure");
        };
    }

    /** A share from hundredths of a percent: {@code 8 %}, {@code 7.5 %}. */
    public String percent(long hundredths) {
        return texts.get("measures.percent", plain(hundredths, 100));
    }

    /** A share of two figures in whole percent, rounded half up: {@code 9 %}. */
    public String percent(long part, long whole) {
        BigDecimal share = BigDecimal.valueOf(part)
                .multiply(BigDecimal.valueOf(100))
                .divide(BigDecimal.valueOf(whole), 0, RoundingMode.HALF_UP);
        return texts.get("measures.percent", measures.number(share, 0));
    }

    private String plain(long value, long per) {
        BigDecimal figure = BigDecimal.valueOf(value)
                .divide(BigDecimal.valueOf(per), 2, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return measures.number(figure, Math.max(0, figure.scale()));
    }
}
