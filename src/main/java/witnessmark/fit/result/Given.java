package witnessmark.fit.result;

import witnessmark.domain.MeasurePlace;

/**
 * A figure that goes into a check.
 *
 * @param place of what, and where
 * @param value whole parts of its dimension
 * @param basis what it rests on
 * @param source who says it where it was not measured; empty otherwise
 */
public record Given(MeasurePlace place, long value, Basis basis, String source) {}
