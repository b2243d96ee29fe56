package witnessmark.desktop.season;

/**
 * One figure of the season.
 *
 * @param label what it is
 * @param amount how much
 * @param within whether it is a part of the one above it
 */
record MoneyLine(String label, String amount, boolean within) {}
