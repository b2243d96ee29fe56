/**
 * Part designs on trial: their lives beside those of what is usual. Begin with {@link witnessmark.study.trials.Trials}. Answers are
 * in {@link witnessmark.study.result}.
 */
@NullMarked
package witnessmark.study.trials;

import org.jspecify.annotations.NullMarked;
