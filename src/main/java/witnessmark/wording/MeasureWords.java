package witnessmark.wording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import witnessmark.domain.MeasureKind;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.typed.MeasureUnit;

/** Figures of a build sheet as shown, each from whole parts of its dimension, in the dimension's own unit. */
public final class MeasureWords {
    private static final Pattern DECIMALS = Pattern.compile("([0-9]+)[.,]([0-9]+)");

    private final Texts texts;
    private final Measures measures;

    /** Shows figures in the language of the measures. */
    public MeasureWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** {@code 0.195 mm}, {@code 32.7 cc}, {@code 11.89 : 1}: every digit there is, two decimals where there are fewer. */
    public String figure(Dimension dimension, long parts) {
        return texts.get("measures.figure", bare(dimension, parts), sign(dimension));
    }

    /** An uncertainty, to the two digits that mean anything (JCGM 100:2008, 7.2.6), rounded up. */
    public String margin(Dimension dimension, long parts) {
        BigDecimal figure = dimension.shown(parts).round(new MathContext(2, RoundingMode.UP));
        return texts.get("measures.figure", measures.number(figure, Math.max(0, figure.scale())), sign(dimension));
    }

    /** The figure without its unit. */
    public String bare(Dimension dimension, long parts) {
        BigDecimal figure = dimension.shown(parts).stripTrailingZeros();
        int least = dimension == Dimension.LENGTH || dimension == Dimension.RATIO ? 2 : 0;
        return measures.number(figure, Math.max(least, figure.scale()));
    }

    /**
     * A measured figure without its unit, with the zeros it was typed with, as they say how closely it was read.
     *
     * @param typed as it was typed; another unit there says nothing of zeros in this one
     */
    public String bare(MeasureKind kind, long parts, String typed) {
        BigDecimal figure = kind.dimension().shown(parts);
        Matcher decimals = DECIMALS.matcher(typed);
        if (decimals.find()) {
            BigDecimal read = new BigDecimal(decimals.group(1) + "." + decimals.group(2));
            if (read.compareTo(figure.abs()) == 0) {
                return measures.number(figure, read.scale());
            }
        }
        return bare(kind, parts);
    }

    /**
     * A figure of a kind without its unit, as closely as the kind is read: what is worked out is rounded to that, what was
     * measured keeps one digit more where it has one. What rounding would make nothing keeps all its digits.
     */
    public String bare(MeasureKind kind, long parts) {
        long rounded = rounded(kind, parts);
        return rounded == 0 && parts != 0
                ? exact(kind, parts)
                : measures.number(kind.dimension().shown(rounded), Math.max(kind.decimals(), digits(kind, rounded)));
    }

    /** A measured figure with its unit, with the zeros it was typed with. */
    public String figure(MeasureKind kind, long parts, String typed) {
        return texts.get("measures.figure", bare(kind, parts, typed), sign(kind.dimension()));
    }

    /** A figure that somebody set, with every digit of it and those its kind is read to. */
    public String exact(MeasureKind kind, long parts) {
        return measures.number(kind.dimension().shown(parts), Math.max(kind.decimals(), digits(kind, parts)));
    }

    /** The figure as {@link #bare(MeasureKind, long)} shows it, in whole parts. */
    public long rounded(MeasureKind kind, long parts) {
        int decimals = kind.workedOut() ? kind.decimals() : kind.decimals() + 1;
        return kind.dimension().parts(kind.dimension().shown(parts).setScale(decimals, RoundingMode.HALF_UP));
    }

    private static int digits(MeasureKind kind, long parts) {
        return digits(kind.dimension(), parts);
    }

    private static int digits(Dimension dimension, long parts) {
        return dimension.shown(parts).stripTrailingZeros().scale();
    }

    /** Figures that are added up, each without its unit and with the digits that the longest of them needs. */
    public List<String> column(Dimension dimension, int least, List<Long> parts) {
        int decimals = parts.stream().mapToInt(each -> digits(dimension, each)).reduce(least, Math::max);
        return parts.stream()
                .map(each -> measures.number(dimension.shown(each), decimals))
                .toList();
    }

    /** The sign of the unit: {@code mm}, {@code cc}, {@code µm}. */
    public String sign(Dimension dimension) {
        return MeasureUnit.shown(dimension).sign();
    }
}
