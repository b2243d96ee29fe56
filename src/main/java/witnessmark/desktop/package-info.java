/**
 * The window. Its sub-rooms: {@code task} (all threads and timers), {@code form} (the parts every place is built from),
 * {@code shell} (the frame around the places) and one room per place. Open
 * {@link witnessmark.desktop.shell.ShellFrame} first.
 */
@NullMarked
package witnessmark.desktop;

import org.jspecify.annotations.NullMarked;
