/**
 * Facts as flat rows: which columns a kind of fact has in the logbook file, which headings in the season folder, and
 * how each value is written and read back. Everything is derived from the records of {@code domain}, so a component
 * added there appears in both. Open {@link witnessmark.domain.image.RecordType} first.
 */
@NullMarked
package witnessmark.domain.image;

import org.jspecify.annotations.NullMarked;
