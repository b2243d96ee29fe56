package witnessmark.desktop.engines;

import witnessmark.logbook.engines.Figure;

/**
 * A figure as shown, which opens the entries behind it.
 *
 * @param text already formatted, with its unit
 * @param amount what it is sorted by, in the counter's unit
 * @param figure what is opened
 */
record Shown(String text, long amount, Figure figure) {
    /** The same figure under other words. */
    Shown as(String words) {
        return new Shown(words, amount, figure);
    }
}
