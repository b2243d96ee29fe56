/** Text that comes packed, as gzip or in a zip, unpacked with bounds. */
@NullMarked
package witnessmark.trace.packed;

import org.jspecify.annotations.NullMarked;
