package witnessmark.fit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Measurement;
import witnessmark.domain.Metal;
import witnessmark.domain.SpeedFigures;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Conditions;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Term;
import witnessmark.fit.result.ToTwenty;
import witnessmark.mechanics.Growth;
import witnessmark.quantity.Temperature;

/**
 * Brings sizes of parts to 20 °C, the temperature that sizes are given for (ISO 1). Micrometers, bore gauges and the
 * rings they are set in are of steel and as warm as the part, so that half of its growth is never seen: a size is out by
 * {@code L·(α − α_gauge)·(t − 20)} (JCGM 100:2008, H.1). Steel parts read right at any temperature. What is smaller than
 * the last digit read is not added, since it would say more than was read. Gaps are read as gaps and stay as they are.
 */
public final class AtTwenty {
    /** Of steel gauge blocks, in one for each kelvin (ISO 3650; value from memory). */
    static final double GAUGE = 11.5e-6;

    /** A part and its gauge are as warm as somebody said to a degree; common practice, no source. */
    private static final double DEGREES = 1;

    /** What nobody wrote down is asked for where so many degrees would move the last digit; common practice, no source. */
    private static final double WORKSHOP = 10;

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:[.,]([0-9]+))?");

    private final @Nullable SpeedFigures made;

    /** @param made what engines of the design are made of, or null where nobody wrote it down */
    public AtTwenty(@Nullable SpeedFigures made) {
        this.made = made;
    }

    /** What brings a figure to 20 °C; null where it is no size of a part, or nothing that could be read. */
    public @Nullable ToTwenty of(Measurement figure) {
        if (!isSize(figure.kind())) {
            return null;
        }
        Metal metal = metal(figure.kind());
        Temperature at = figure.temperature();
        double step = step(figure);
        if (metal == null || at == null) {
            double warmer = at == null ? WORKSHOP : warmer(at);
            Metal most = metal == null ? Metal.ALUMINIUM : metal;
            return Math.abs(reads(most, figure.value(), warmer)) < step
                    ? null
                    : new ToTwenty(at, metal, 0, 0, 0, GAUGE);
        }
        double reads = reads(metal, figure.value(), warmer(at));
        long by = -Math.round(Math.rint(reads / step) * step);
        double known = Math.abs(Growth.of(Stuff.ALPHA_HALF_WIDTH * alpha(metal), figure.value(), warmer(at)))
                + Math.abs(reads(metal, figure.value(), DEGREES));
        return by == 0 ? null : new ToTwenty(at, metal, by, Math.round(known), alpha(metal), GAUGE);
    }

    private static double warmer(Temperature at) {
        return at.inCelsius().doubleValue() - Conditions.REFERENCE;
    }

    /** How much too large a size reads. */
    private static double reads(Metal metal, long size, double warmer) {
        return metal == Metal.STEEL ? 0 : Growth.of(alpha(metal) - GAUGE, size, warmer);
    }

    private static double alpha(Metal metal) {
        return Stuff.of(metal).alpha();
    }

    /** The last digit that was read, in nanometres: of what was typed, in whatever unit; else what is usual. */
    private static double step(Measurement figure) {
        Matcher typed = NUMBER.matcher(figure.typed());
        if (typed.find() && figure.value() != 0) {
            BigDecimal number = new BigDecimal(typed.group().replace(',', '.'));
            if (number.signum() != 0) {
                int decimals = typed.group(1) == null ? 0 : typed.group(1).length();
                return BigDecimal.valueOf(Math.abs(figure.value()))
                        .divide(number, 6, RoundingMode.HALF_UP)
                        .movePointLeft(decimals)
                        .doubleValue();
            }
        }
        return figure.kind()
                .dimension()
                .parts(BigDecimal.ONE.movePointLeft(figure.kind().decimals()));
    }

    private static boolean isSize(MeasureKind kind) {
        return switch (kind) {
            case BLOCK_HEIGHT,
                    BORE,
                    MAIN_HOUSING,
                    MAIN_BORE,
                    MAIN_JOURNAL,
                    PIN_JOURNAL,
                    ROD_LENGTH,
                    BIG_END_HOUSING,
                    BIG_END_BORE,
                    PISTON,
                    TOP_LAND,
                    COMPRESSION_HEIGHT,
                    HEAD_THICKNESS -> true;
            default -> false;
        };
    }

    private @Nullable Metal metal(MeasureKind kind) {
        return made == null
                ? null
                : switch (kind) {
                    case BLOCK_HEIGHT, BORE, MAIN_HOUSING, MAIN_BORE -> made.block();
                    case MAIN_JOURNAL, PIN_JOURNAL -> made.crank();
                    case ROD_LENGTH, BIG_END_HOUSING, BIG_END_BORE -> made.rods();
                    case PISTON, TOP_LAND, COMPRESSION_HEIGHT -> made.pistons();
                    default -> null; // nobody writes down what a head is made of
                };
    }

    /**
     * The lines of a column as they go together: all sizes in it at 20 °C, or all as read where one cannot be brought
     * there. Parts of one metal, equally warm, differ as they do at 20 °C and stay as read.
     */
    static List<Term> together(List<Term> terms) {
        List<Given> sizes = terms.stream()
                .map(Term::given)
                .filter(given ->
                        given.basis() == Basis.MEASURED && isSize(given.place().kind()))
                .toList();
        boolean lacks = sizes.stream().anyMatch(AtTwenty::lacks);
        ToTwenty first = sizes.isEmpty() ? null : sizes.get(0).toTwenty();
        boolean alike = sizes.size() > 1
                && first != null
                && sizes.stream().map(Given::toTwenty).allMatch(each -> isAlike(first, each));
        return lacks || alike ? terms.stream().map(AtTwenty::asRead).toList() : terms;
    }

    private static boolean lacks(Given given) {
        return given.toTwenty() != null && given.toTwenty().lacks();
    }

    private static boolean isAlike(ToTwenty one, @Nullable ToTwenty other) {
        return other != null && Objects.equals(one.at(), other.at()) && one.metal() == other.metal();
    }

    private static Term asRead(Term term) {
        boolean brought = term.given().toTwenty() != null && !lacks(term.given());
        return brought && term.part() != Term.Part.AS_VOLUME
                ? Term.of(term.given().asRead(), term.part())
                : term;
    }
}
