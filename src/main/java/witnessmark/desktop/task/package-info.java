/**
 * Work off the event thread and timers, and nothing else in the program may start either. It differs from {@code form}
 * in that it shows nothing. Open {@link witnessmark.desktop.task.Tasks} first.
 */
@NullMarked
package witnessmark.desktop.task;

import org.jspecify.annotations.NullMarked;
