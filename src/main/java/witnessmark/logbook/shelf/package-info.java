/**
 * Where every part is, what is left in it, and how much stock there is. It differs from {@code logbook.engines} in that
 * it goes by the part, wherever it is. Writes nothing. Open {@link witnessmark.logbook.shelf.SeeShelf} first.
 */
@NullMarked
package witnessmark.logbook.shelf;

import org.jspecify.annotations.NullMarked;
