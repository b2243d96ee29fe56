/**
 * What tests of the window stand on: the event thread, a look, layout and accessibility walks, golden texts, pictures.
 * Open {@link witnessmark.desktop.testing.UiTest} first.
 */
@NullMarked
package witnessmark.desktop.testing;

import org.jspecify.annotations.NullMarked;
