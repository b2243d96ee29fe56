/** Tests of the work queue and its timers. */
@NullMarked
package witnessmark.desktop.task;

import org.jspecify.annotations.NullMarked;
