/**
 * What dyno sheets say: figures turned to a reference day, the mean of the pulls, how well they repeat, and what changed
 * since the engine's own baseline. Begin with {@link witnessmark.study.dyno.DynoSheets}. Answers are in
 * {@link witnessmark.study.result}.
 */
@NullMarked
package witnessmark.study.dyno;

import org.jspecify.annotations.NullMarked;
