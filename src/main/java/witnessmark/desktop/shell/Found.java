package witnessmark.desktop.shell;

/**
 * One thing found.
 *
 * @param title what it is: "Valve springs VS-03"
 * @param note where, or since when, in second ink; may be empty
 * @param open goes there; run on the event thread
 */
public record Found(String title, String note, Runnable open) {}
