package witnessmark.trace.result;

import org.jspecify.annotations.Nullable;

/**
 * How far a channel went. A figure counts once it was held for two samples.
 *
 * @param highest or null when there were not two samples
 * @param highestAt microseconds after the part's first sample
 * @param lowest or null as above
 * @param lowestAt microseconds
 * @param beyond time beyond the limit, microseconds, or null when no limit was said
 */
public record Extremes(
        @Nullable Double highest,
        long highestAt,
        @Nullable Double lowest,
        long lowestAt,
        @Nullable Long beyond) {}
