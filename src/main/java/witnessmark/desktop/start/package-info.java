/**
 * Beginning: the strip of the sample season, the team's own logbook, season folders in and out, backups and checks. It
 * differs from {@code beforewego} in that it is about the logbook as a whole. Open
 * {@link witnessmark.desktop.start.Start} first: it puts the rest together.
 */
@NullMarked
package witnessmark.desktop.start;

import org.jspecify.annotations.NullMarked;
