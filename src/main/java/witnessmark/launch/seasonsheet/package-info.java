/**
 * Words a season for its printed pages: what the ledger shows, and after that every line its figures are made of. Open
 * {@link witnessmark.launch.seasonsheet.SeasonSheetWords} first.
 */
@NullMarked
package witnessmark.launch.seasonsheet;

import org.jspecify.annotations.NullMarked;
