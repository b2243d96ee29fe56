/** Tags for the bags of parts, on paper. */
@NullMarked
package witnessmark.launch.tags;

import org.jspecify.annotations.NullMarked;
