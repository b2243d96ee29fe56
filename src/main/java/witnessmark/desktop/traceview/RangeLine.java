package witnessmark.desktop.traceview;

/**
 * Ranges of a temperature of about one size.
 *
 * @param from °C, for the order
 */
record RangeLine(String channel, String range, int from, String count) {}
