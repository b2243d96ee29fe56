/**
 * The place Season ledger: what failures cost, where it went, and what was decided and came of it, on one page read from
 * top to bottom. Classes ending in Model word what the use case answers and need no display. Open {@link
 * witnessmark.desktop.season.SeasonPlace} first.
 */
@NullMarked
package witnessmark.desktop.season;

import org.jspecify.annotations.NullMarked;
