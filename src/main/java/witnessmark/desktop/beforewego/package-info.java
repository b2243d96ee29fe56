/**
 * The first place: what must be done before the next event. It differs from the run sheet and the engines in that
 * nothing is written here; a line leads to where it is. Open
 * {@link witnessmark.desktop.beforewego.BeforeWeGoPlace} first, then
 * {@link witnessmark.desktop.beforewego.BeforeWeGoModel} for what it says.
 */
@NullMarked
package witnessmark.desktop.beforewego;

import org.jspecify.annotations.NullMarked;
