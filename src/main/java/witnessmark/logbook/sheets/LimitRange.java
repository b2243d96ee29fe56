package witnessmark.logbook.sheets;

import witnessmark.quantity.Counter;

/**
 * A limit, or between what limits usually lie, to be said with its unit.
 *
 * @param low in the counter's unit, age in months
 * @param high the same as the lowest for one limit
 */
public record LimitRange(Counter counter, long low, long high) {
    static LimitRange of(Counter counter, long amount) {
        return new LimitRange(counter, amount, amount);
    }
}
