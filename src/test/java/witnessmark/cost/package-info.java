/** Tests of costs, and the seeded year of money they run on. Open {@link witnessmark.cost.CostGenerator} first. */
@NullMarked
package witnessmark.cost;

import org.jspecify.annotations.NullMarked;
