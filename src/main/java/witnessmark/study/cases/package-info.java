/**
 * Incidents held beside each other and beside the other engines. Begin with {@link witnessmark.study.cases.Common}: what two or
 * more share; then {@link witnessmark.study.cases.Across}: which other engines carry the same. Answers are in
 * {@link witnessmark.study.result}.
 */
@NullMarked
package witnessmark.study.cases;

import org.jspecify.annotations.NullMarked;
