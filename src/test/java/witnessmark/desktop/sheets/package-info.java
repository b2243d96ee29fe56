/** The sheets in a window: typed into, laid out, named for screen readers, painted. */
@NullMarked
package witnessmark.desktop.sheets;

import org.jspecify.annotations.NullMarked;
