/** Pictures made by the tests themselves, whole and spoilt. */
@NullMarked
package witnessmark.picture;

import org.jspecify.annotations.NullMarked;
