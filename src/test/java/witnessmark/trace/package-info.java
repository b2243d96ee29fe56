/**
 * Traces: seeded stories of a car's running ({@link witnessmark.trace.Story}) written in the dialects of loggers
 * ({@link witnessmark.trace.Dialect}), read back and held against sums over the whole story
 * ({@link witnessmark.trace.WholeSums}). All data is invented.
 */
package witnessmark.trace;
