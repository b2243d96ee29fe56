package witnessmark.fit.result.face;

/** A figure with the ends it may lie between. */
public record Range(double low, double likely, double high) {}
