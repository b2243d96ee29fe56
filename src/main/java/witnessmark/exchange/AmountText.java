package witnessmark.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.PriorLife;
import witnessmark.domain.RunOn;
import witnessmark.domain.image.Component;
import witnessmark.quantity.Counter;

/**
 * Amounts of whatever a row counts in, with their unit: {@code 12 h}, {@code 2310.4 km}, {@code 60 months}. A figure
 * without one is in the counter's own unit, as folders were written once; one so small that it was meant in hours or
 * kilometres is not read.
 */
final class AmountText {
    private static final Map<Class<? extends Fact>, Set<String>> AMOUNTS = Map.of(
            Limit.class, Set.of("amount"),
            PriorLife.class, Set.of("amount", "lowest", "highest"),
            RunOn.class, Set.of("upTo"));

    private static final Pattern FIGURE = Pattern.compile("([0-9]{1,19}(?:\\.[0-9]{1,9})?)\\s*(.*)");
    private static final BigDecimal HOUR = BigDecimal.valueOf(3_600_000);
    private static final BigDecimal SECOND = BigDecimal.valueOf(1_000);
    private static final BigDecimal KILOMETRE = BigDecimal.valueOf(1_000);
    private static final int DECIMALS = 4;

    private AmountText() {}

    /** Whether a part of a kind of entry is counted in what the row says. */
    static boolean isAmount(Class<? extends Fact> kind, Component component) {
        return AMOUNTS.getOrDefault(kind, Set.of()).contains(component.name());
    }

    /**
     * What a row counts in: what it says itself, else what the limit it goes past is in, else running time.
     *
     * @param values those of the row, in the order of its components
     * @return null when it is not known
     */
    static @Nullable Counter counter(List<Component> components, @Nullable Object[] values, Facts facts) {
        boolean past = false;
        for (int i = 0; i < values.length; i++) {
            if (values[i] instanceof Counter counter) {
                return counter;
            }
            boolean limit = components.get(i).refersTo() == Limit.class;
            if (limit && values[i] instanceof Id<?> id) {
                return facts.of(Limit.class)
                        .find(new Id<>(id.value()))
                        .map(found -> found.fact().counter())
                        .orElse(null);
            }
            past |= limit;
        }
        return past ? Counter.RUNNING : null;
    }

    /** An amount as it is written. */
    static String of(Class<? extends Fact> kind, Counter counter, long amount) {
        BigDecimal figure = BigDecimal.valueOf(amount);
        return switch (counter.unit()) {
            case MILLISECOND -> time(figure);
            case METRE -> plain(figure.divide(KILOMETRE)) + " km";
            case COUNT, DAY -> amount + " " + (amount == 1 ? one(unit(kind, counter)) : unit(kind, counter));
        };
    }

    private static String time(BigDecimal millis) {
        BigDecimal hours = millis.divide(HOUR, DECIMALS, RoundingMode.DOWN);
        return hours.multiply(HOUR).compareTo(millis) == 0 ? plain(hours) + " h" : plain(millis.divide(SECOND)) + " s";
    }

    /**
     * Reads an amount.
     *
     * @throws IllegalArgumentException or ArithmeticException if it is none, or finer than its counter counts
     */
    static long read(Class<? extends Fact> kind, Counter counter, String text) {
        Matcher parts = FIGURE.matcher(text.strip());
        if (!parts.matches()) {
            throw new IllegalArgumentException(text);
        }
        BigDecimal figure = new BigDecimal(parts.group(1));
        String unit = parts.group(2).strip().toLowerCase(Locale.ROOT);
        BigDecimal factor = switch (counter.unit()) {
            case MILLISECOND -> time(unit, figure);
            case METRE -> distance(unit, figure);
            case COUNT, DAY -> count(unit, unit(kind, counter));
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

    /** An amount that can be read, for the sentence when one cannot. */
    static String form(Class<? extends Fact> kind, @Nullable Counter counter) {
        if (counter == null) {
            return "12 h";
        }
        return switch (counter.unit()) {
            case MILLISECOND -> "12 h";
            case METRE -> "2310.4 km";
            case COUNT, DAY -> "12 " + unit(kind, counter);
        };
    }

    /** Ages are carried in by days, and limited by months. */
    private static String unit(Class<? extends Fact> kind, Counter counter) {
        return counter == Counter.AGE && kind == PriorLife.class ? "days" : counter.code();
    }

    private static String one(String several) {
        return several.substring(0, several.length() - 1);
    }

    private static String plain(BigDecimal figure) {
        return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
    }
}
