/**
 * The frame around the places: window, rail, menus, finding, look, help. It differs from {@code form} in that it knows
 * of places, but of none in particular. Open {@link witnessmark.desktop.shell.Place} to make one, and
 * {@link witnessmark.desktop.shell.ShellPane} to see how they are shown.
 */
@NullMarked
package witnessmark.desktop.shell;

import org.jspecify.annotations.NullMarked;
