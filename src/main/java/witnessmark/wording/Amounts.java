package witnessmark.wording;

import java.math.BigDecimal;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.RunningTime;

/**
 * Amounts of a counter as shown, from whole numbers of the counter's unit: a life, a limit, what is left. Times are in
 * decimal hours, distances in the team's unit, the rest is counted out.
 */
public final class Amounts {
    private static final int FINE = 2;
    private static final int ROUGH = 1;

    private final Texts texts;
    private final Measures measures;

    /** Shows amounts in the language and units of the measures. */
    public Amounts(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** {@code 12.87 h}, {@code 2 310.4 km}, {@code 14 laps}, {@code 1 race start}. */
    public String amount(Counter counter, long amount) {
        return withUnit(counter, amount, figure(counter, amount, FINE));
    }

    /** As {@link #amount} with one decimal: {@code 12.9 h}. */
    public String rough(Counter counter, long amount) {
        return withUnit(counter, amount, figure(counter, amount, ROUGH));
    }

    /**
     * {@code 8 to 14 h}, {@code 1.9 to 2.4 h}, {@code 3 to 5 laps}: both ends with as many decimals as either needs, at
     * most two. One amount alone when the ends are the same.
     */
    public String range(Counter counter, long lowest, long highest) {
        BigDecimal low = value(counter, lowest, FINE);
        BigDecimal high = value(counter, highest, FINE);
        int decimals = Math.max(Figures.needed(low), Figures.needed(high));
        String top = measures.number(high, decimals);
        return low.compareTo(high) == 0
                ? withUnit(counter, highest, top)
                : withUnit(counter, highest, texts.get("measures.range", measures.number(low, decimals), top));
    }

    /** As {@link #range}, of limits: those of an age are in months. */
    public String limits(Counter counter, long lowest, long highest) {
        if (counter != Counter.AGE) {
            return range(counter, lowest, highest);
        }
        return lowest == highest
                ? texts.get("measures.months", highest)
                : texts.get("measures.months.range", lowest, highest);
    }

    /** How far past a limit: {@code 0.9 h over}; {@code at its limit} when it is exactly there. */
    public String over(Counter counter, long past) {
        return past == 0 ? texts.get("measures.at_limit") : texts.get("measures.over", visible(counter, past));
    }

    /** How far to a limit: {@code 6.7 h to its limit}; {@code at its limit} when nothing is left. */
    public String toLimit(Counter counter, long left) {
        return left == 0 ? texts.get("measures.at_limit") : texts.get("measures.to_limit", visible(counter, left));
    }

    /** The same in short, where a heading names the limit: {@code 6.7 h left}. */
    public String left(Counter counter, long left) {
        return left == 0 ? texts.get("measures.at_limit") : texts.get("measures.left", visible(counter, left));
    }

    /** A rough amount that never rounds to nothing: {@code 0.9 h}, {@code 0.04 h}, {@code 14 s}, {@code 30 m}. */
    private String visible(Counter counter, long amount) {
        for (int decimals = ROUGH; decimals <= FINE; decimals++) {
            if (value(counter, amount, decimals).signum() != 0) {
                return withUnit(counter, amount, figure(counter, amount, decimals));
            }
        }
        return counter.unit() == Counter.Unit.MILLISECOND
                ? measures.running(new RunningTime(Math.max(1000, amount)))
                : measures.distance(new Distance(amount), witnessmark.quantity.typed.DistanceUnit.METRE);
    }

    private String figure(Counter counter, long amount, int decimals) {
        BigDecimal value = value(counter, amount, decimals);
        return measures.number(value, value.scale());
    }

    /** The figure in the unit shown; a distance has one decimal, a count none. */
    private BigDecimal value(Counter counter, long amount, int decimals) {
        return switch (counter.unit()) {
            case MILLISECOND -> new RunningTime(amount).hours(decimals);
            case METRE -> measures.units().distance().in(new Distance(amount), ROUGH);
            case COUNT, DAY -> BigDecimal.valueOf(amount);
        };
    }

    private String withUnit(Counter counter, long amount, String figure) {
        return switch (counter.unit()) {
            case MILLISECOND -> texts.get("measures.hours", figure);
            case METRE ->
                texts.get(
                        "measures.figure",
                        figure,
                        measures.sign(measures.units().distance()));
            case DAY -> texts.get(amount == 1 ? "measures.day" : "measures.days", figure);
            case COUNT ->
                texts.get(
                        "measures.count." + counter.code().replace(' ', '_') + (amount == 1 ? ".one" : ".many"),
                        figure);
        };
    }
}
