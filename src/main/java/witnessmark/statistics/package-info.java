/**
 * Published methods of statistics: numbers in, numbers out, whatever was measured. Each names its source and from how few
 * numbers on it says anything. Begin with {@link witnessmark.statistics.MannKendall}: is there a trend; then
 * {@link witnessmark.statistics.TheilSen}: how steep.
 */
@NullMarked
package witnessmark.statistics;

import org.jspecify.annotations.NullMarked;
