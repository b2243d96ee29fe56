/** The page of a trial: a part design beside what is usual, their lives as strips, what was found, the verdict. */
@NullMarked
package witnessmark.desktop.trials;

import org.jspecify.annotations.NullMarked;
