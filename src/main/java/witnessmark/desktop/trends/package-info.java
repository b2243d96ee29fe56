/** The readings of an engine and where they are going: a list, what asks for most first, and the chart of the row in hand. */
@NullMarked
package witnessmark.desktop.trends;

import org.jspecify.annotations.NullMarked;
