/**
 * Copies of the logbook in the window: the second place and what stands there, getting a backup back, salvaging a
 * damaged file, saving under another name. Begin with {@link witnessmark.desktop.keeping.KeepingPages}.
 */
@NullMarked
package witnessmark.desktop.keeping;

import org.jspecify.annotations.NullMarked;
