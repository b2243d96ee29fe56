/** Whether what was done about incidents holds. Begin with {@link witnessmark.logbook.proof.SeeProof}. */
@NullMarked
package witnessmark.logbook.proof;

import org.jspecify.annotations.NullMarked;
