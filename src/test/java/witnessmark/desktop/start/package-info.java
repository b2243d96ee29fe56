/** Beginning, season folders, backups and the story of the sample, on real files. */
@NullMarked
package witnessmark.desktop.start;

import org.jspecify.annotations.NullMarked;
