/**
 * What the costs come to.
 */
@NullMarked
package witnessmark.cost.result;

import org.jspecify.annotations.NullMarked;
