package witnessmark.fit.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.LimitRank;

/**
 * One end of what a figure may be.
 *
 * @param value whole parts of its dimension
 * @param rank whose limit it is; null for what the trade holds to where nobody set a limit
 * @param source where it is written; empty for what the trade holds to
 */
public record Bound(long value, @Nullable LimitRank rank, String source) {}
