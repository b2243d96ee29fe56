package witnessmark.study.result;

import witnessmark.domain.Entry;
import witnessmark.domain.ProofSeen;
import witnessmark.quantity.RunningTime;

/**
 * A look or a reading that was asked for, made.
 *
 * @param seen what was seen
 * @param ran the running with the fix by then
 */
public record ProofMade(Entry<ProofSeen> seen, RunningTime ran) {}
