package witnessmark.desktop.history;

import java.time.Instant;

/**
 * One change of an entry as a row shows it.
 *
 * @param at when it was written
 * @param when the same, already formatted
 * @param who who wrote it
 * @param what what it changed, from what to what
 * @param why the reason given
 */
public record HistoryLine(Instant at, String when, String who, String what, String why) {}
