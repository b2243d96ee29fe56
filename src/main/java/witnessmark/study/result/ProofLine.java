package witnessmark.study.result;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.ProofWanted;

/**
 * One thing asked for as proof, and how far it is there.
 *
 * @param wanted what is asked for
 * @param state how it stands
 * @param met how many times it was as asked for, at the running asked for
 * @param made every time it was looked at, the earliest first
 * @param setLate whether it was set after the engine had run with the fix
 */
public record ProofLine(Entry<ProofWanted> wanted, State state, int met, List<ProofMade> made, boolean setLate) {
    /** How it stands. */
    public enum State {
        /** Not before more running. */
        NOT_YET,
        /** It can be looked at now. */
        DUE,
        MET,
        /** The last look was not as asked for. */
        NOT_MET
    }

    public ProofLine {
        made = List.copyOf(made);
    }
}
