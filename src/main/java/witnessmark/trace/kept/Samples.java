package witnessmark.trace.kept;

/**
 * Samples of one channel, in the order of time. The arrays are the caller's own.
 *
 * @param micros times within the part
 * @param values in the unit of the channel's kind; NaN where the channel had none
 */
@SuppressWarnings("ArrayRecordComponent")
public record Samples(long[] micros, double[] values) {}
