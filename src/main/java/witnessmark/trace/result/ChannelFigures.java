package witnessmark.trace.result;

/**
 * What a channel did between two times, in the unit of its kind.
 *
 * @param samples with a figure, 1 or more
 * @param least of them
 * @param leastAt microseconds after the first sample of the trace
 * @param most of them
 * @param mostAt microseconds as above
 * @param mean over time, the figure going evenly from one sample to the next; holes are left out
 */
public record ChannelFigures(long samples, double least, long leastAt, double most, long mostAt, double mean) {}
