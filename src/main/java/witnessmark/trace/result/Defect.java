package witnessmark.trace.result;

/**
 * Something wrong at a place of a trace.
 *
 * @param kind what
 * @param channel the column's heading; empty for the row as a whole
 * @param part which part of a trace whose time begins anew, from 0
 * @param from its first sample, microseconds after the part's first
 * @param until its last sample, or the one after it where the figures are good again
 * @param samples how many samples it took
 */
public record Defect(DefectKind kind, String channel, int part, long from, long until, long samples) {}
