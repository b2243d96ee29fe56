/** What the checks of a build sheet come to. */
@NullMarked
package witnessmark.fit.result;

import org.jspecify.annotations.NullMarked;
