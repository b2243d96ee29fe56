/**
 * What failures, weekends and seasons cost. Begin with {@link witnessmark.cost.Costs}, which cuts every cost into pieces
 * that are counted once; all totals are sums of pieces.
 */
@NullMarked
package witnessmark.cost;

import org.jspecify.annotations.NullMarked;
