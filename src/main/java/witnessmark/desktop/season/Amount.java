package witnessmark.desktop.season;

/**
 * An amount as it stands in a column.
 *
 * @param text with all decimals; empty for nothing to say
 * @param minor the same in minor units, to sort and to add up by
 */
record Amount(String text, long minor) {
    /** Nothing to say. */
    static final Amount NONE = new Amount("", 0);
}
