/**
 * Build sheets: what was measured of an engine, how it stands against its limits, what would put it right, and what
 * stood when it was signed.
 */
@NullMarked
package witnessmark.logbook.measuring;

import org.jspecify.annotations.NullMarked;
