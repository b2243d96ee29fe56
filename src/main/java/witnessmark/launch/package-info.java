/**
 * Starts the program: window or command line, the rooms joined by constructors, the last resort for what nobody
 * foresaw. Open {@link witnessmark.launch.Main} first.
 */
@NullMarked
package witnessmark.launch;

import org.jspecify.annotations.NullMarked;
