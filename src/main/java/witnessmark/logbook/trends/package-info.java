/** Sees where readings are going. */
@NullMarked
package witnessmark.logbook.trends;

import org.jspecify.annotations.NullMarked;
