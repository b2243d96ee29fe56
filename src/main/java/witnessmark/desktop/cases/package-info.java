/**
 * The investigation of an incident on its page: findings against causes, the way up to it, what to ask, and incidents beside
 * each other. Begin with {@link witnessmark.desktop.cases.CaseView}.
 */
@NullMarked
package witnessmark.desktop.cases;

import org.jspecify.annotations.NullMarked;
