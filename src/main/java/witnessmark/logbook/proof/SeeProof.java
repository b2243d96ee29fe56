package witnessmark.logbook.proof;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.study.proof.Proofs;
import witnessmark.study.result.ProofOfCase;

/** Sees how far it is proven that what was done about incidents holds. */
public final class SeeProof {
    private SeeProof() {}

    /** Of one incident. */
    public static ProofOfCase of(View view, Entry<Incident> incident) {
        return new Proofs(view.ledger()).of(incident);
    }

    /** Of every incident about which something is done, the latest first. */
    public static List<ProofOfCase> all(View view) {
        return new Proofs(view.ledger()).all();
    }
}
