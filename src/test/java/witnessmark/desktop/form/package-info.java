/** Tests of the parts that places are built from. */
@NullMarked
package witnessmark.desktop.form;

import org.jspecify.annotations.NullMarked;
