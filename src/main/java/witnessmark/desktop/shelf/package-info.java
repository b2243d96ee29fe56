/**
 * The place Parts shelf: every part wherever it is, what is left in it, and stock by batch. It differs from
 * {@code engines} in that it goes by the part, and from here what happens to a part is written on its sheet. Classes ending
 * in Model word what the use case answers and need no display. Open {@link witnessmark.desktop.shelf.ShelfPlace} first.
 */
@NullMarked
package witnessmark.desktop.shelf;

import org.jspecify.annotations.NullMarked;
