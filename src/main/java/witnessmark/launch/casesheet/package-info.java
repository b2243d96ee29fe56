/**
 * Words an incident for pages that leave the team. Open {@link witnessmark.launch.casesheet.CaseSheetWords} first.
 */
@NullMarked
package witnessmark.launch.casesheet;

import org.jspecify.annotations.NullMarked;
