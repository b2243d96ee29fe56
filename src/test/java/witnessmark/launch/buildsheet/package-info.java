@NullMarked
package witnessmark.launch.buildsheet;

import org.jspecify.annotations.NullMarked;
