package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.RunningTime;

/**
 * Something found at a place of a trace: an over-rev, a dip, a defect.
 *
 * @param trace in which trace
 * @param kind what it is
 * @param at how long after the first sample
 * @param lasted how long, or null for a single sample
 * @param channel in which channel, as the file calls it; empty for all of them
 * @param thousandths its worst figure in thousandths of the channel's unit, or null when it has none
 * @param words what else is known of it: gear, throttle
 */
public record TraceMark(
        Id<Trace> trace,
        TraceMarkKind kind,
        RunningTime at,
        @Nullable RunningTime lasted,
        String channel,
        @Nullable Long thousandths,
        String words)
        implements Fact {}
