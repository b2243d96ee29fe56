/** Tests of the store on real files, fresh each time. Open {@link witnessmark.store.TestLogbooks} first. */
@NullMarked
package witnessmark.store;

import org.jspecify.annotations.NullMarked;
