package witnessmark.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import witnessmark.domain.Fact;
import witnessmark.domain.PriorLife;
import witnessmark.quantity.Counter;

/**
 * An amount of what a counter counts, with its unit: {@code 12 h}, {@code 2310.4 km}, {@code 60 months}. A figure
 * without one is in the counter's own unit, as folders were written once; one so small that it was meant in hours or
 * kilometres is not read.
 *
 * @param kind the kind of entry it stands in: ages are carried in by days, and limited by months
 * @param counter what it counts
 */
record AmountText(Class<? extends Fact> kind, Counter counter) implements FigureText {
    private static final Pattern FIGURE = Pattern.compile("([0-9]{1,19}(?:\\.[0-9]{1,9})?)\\s*(.*)");
    private static final BigDecimal HOUR = BigDecimal.valueOf(3_600_000);
    private static final BigDecimal SECOND = BigDecimal.valueOf(1_000);
    private static final BigDecimal KILOMETRE = BigDecimal.valueOf(1_000);
    private static final int DECIMALS = 4;

    @Override
    public String of(long amount) {
        BigDecimal figure = BigDecimal.valueOf(amount);
        return switch (counter.unit()) {
            case MILLISECOND -> time(figure);
            case METRE -> plain(figure.divide(KILOMETRE)) + " km";
            case COUNT, DAY -> amount + " " + (amount == 1 ? one(unit()) : unit());
        };
    }

    private static String time(BigDecimal millis) {
        BigDecimal hours = millis.divide(HOUR, DECIMALS, RoundingMode.DOWN);
        return hours.multiply(HOUR).compareTo(millis) == 0 ? plain(hours) + " h" : plain(millis.divide(SECOND)) + " s";
    }

    @Override
    public long read(String text) {
        Matcher parts = FIGURE.matcher(text.strip());
        if (!parts.matches()) {
            throw new IllegalArgumentException(text);
        }
        BigDecimal figure = new BigDecimal(parts.group(1));
        String unit = parts.group(2).strip().toLowerCase(Locale.ROOT);
        BigDecimal factor = switch (counter.unit()) {
            case MILLISECOND -> time(unit, figure);
            case METRE -> distance(unit, figure);
            case COUNT, DAY -> count(unit, unit());
        };
        return figure.multiply(factor).longValueExact();
    }

    private static BigDecimal time(String unit, BigDecimal figure) {
        return switch (unit) {
            case "h" -> HOUR;
            case "min" -> BigDecimal.valueOf(60_000);
            case "s" -> SECOND;
            case "" -> old(figure, 60_000);
            default -> throw new IllegalArgumentException(unit);
        };
    }

    private static BigDecimal distance(String unit, BigDecimal figure) {
        return switch (unit) {
            case "km" -> KILOMETRE;
            case "m" -> BigDecimal.ONE;
            case "" -> old(figure, 1_000);
            default -> throw new IllegalArgumentException(unit);
        };
    }

    private static BigDecimal old(BigDecimal figure, long least) {
        if (figure.signum() != 0 && figure.compareTo(BigDecimal.valueOf(least)) < 0) {
            throw new IllegalArgumentException("no unit");
        }
        return BigDecimal.ONE;
    }

    private static BigDecimal count(String unit, String wanted) {
        if (!unit.isEmpty() && !unit.equals(wanted) && !unit.equals(one(wanted))) {
            throw new IllegalArgumentException(unit);
        }
        return BigDecimal.ONE;
    }

    @Override
    public String form() {
        return switch (counter.unit()) {
            case MILLISECOND -> "12 h";
            case METRE -> "2310.4 km";
            case COUNT, DAY -> "12 " + unit();
        };
    }

    private String unit() {
        return counter == Counter.AGE && kind == PriorLife.class ? "days" : counter.code();
    }

    private static String one(String several) {
        return several.substring(0, several.length() - 1);
    }

    private static String plain(BigDecimal figure) {
        return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
    }
}
