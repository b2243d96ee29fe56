/** What the studies come to. */
@NullMarked
package witnessmark.study.result;

import org.jspecify.annotations.NullMarked;
