/**
 * Whether what was done about an incident holds: running and looks since, held against the running after which it failed
 * before. Begin with {@link witnessmark.study.proof.Proofs}. Answers are in {@link witnessmark.study.result}.
 */
@NullMarked
package witnessmark.study.proof;

import org.jspecify.annotations.NullMarked;
