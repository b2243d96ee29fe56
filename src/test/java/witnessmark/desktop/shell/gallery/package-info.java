/** Invented places that show every part of {@code form} at once, for looking at and for the walks of the tests. */
@NullMarked
package witnessmark.desktop.shell.gallery;

import org.jspecify.annotations.NullMarked;
