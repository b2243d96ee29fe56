/** Bringing photos in, many at once. */
@NullMarked
package witnessmark.logbook.photos;

import org.jspecify.annotations.NullMarked;
