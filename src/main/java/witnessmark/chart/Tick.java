package witnessmark.chart;

/**
 * A tick of an axis.
 *
 * @param at where
 * @param label how it reads
 */
record Tick(double at, String label) {}
