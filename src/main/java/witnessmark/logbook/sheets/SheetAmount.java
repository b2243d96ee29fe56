package witnessmark.logbook.sheets;

import witnessmark.quantity.Counter;

/**
 * An amount of a counter, to be said with its unit.
 *
 * @param amount in the counter's unit
 */
public record SheetAmount(Counter counter, long amount) {}
