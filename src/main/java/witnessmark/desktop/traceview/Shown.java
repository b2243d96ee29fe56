package witnessmark.desktop.traceview;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.tracing.KeptTrace;
import witnessmark.logbook.tracing.SeenTrace;
import witnessmark.outcome.Problem;
import witnessmark.trace.result.ThermalRanges;
import witnessmark.trace.result.Wave;

/**
 * What was read of a trace to be shown.
 *
 * @param seen the record with what belongs to it
 * @param kept its samples; null where none are kept
 * @param waves of the channels that are shown, by their column
 * @param near stretches of them looked at more closely; null where they are fine enough
 * @param ranges of its temperatures
 * @param problems why its samples cannot be had, where they cannot
 * @param over another trace laid over it, read likewise
 */
record Shown(
        SeenTrace seen,
        @Nullable KeptTrace kept,
        Map<Integer, Wave> waves,
        @Nullable Near near,
        List<ThermalRanges> ranges,
        List<Problem> problems,
        Optional<Shown> over) {
    Shown {
        waves = Map.copyOf(waves);
        ranges = List.copyOf(ranges);
        problems = List.copyOf(problems);
    }

    /**
     * Channels from one time to another.
     *
     * @param from microseconds
     * @param until microseconds
     */
    record Near(long from, long until, Map<Integer, Wave> waves) {
        Near {
            waves = Map.copyOf(waves);
        }

        boolean covers(long first, long last) {
            return from <= first && last <= until;
        }
    }

    Shown over(@Nullable Shown other) {
        return new Shown(seen, kept, waves, near, ranges, problems, Optional.ofNullable(other));
    }

    /** With a stretch of its channels looked at more closely. */
    Shown near(@Nullable Near closer) {
        return new Shown(seen, kept, waves, closer, ranges, problems, over);
    }

    /** Whether a stretch of it can be had finer than it is at hand. */
    boolean isCoarse(long from, long until) {
        return waves.values().stream().anyMatch(wave -> !wave.fine()) && (near == null || !near.covers(from, until));
    }

    /** The end of its time, microseconds. */
    long lasted() {
        return kept == null ? seen.trace().fact().lasted().millis() * 1_000 : kept.lasted();
    }
}
