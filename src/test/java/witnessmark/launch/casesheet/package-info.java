/** What leaves the team on a case sheet, and what must not. */
@NullMarked
package witnessmark.launch.casesheet;

import org.jspecify.annotations.NullMarked;
