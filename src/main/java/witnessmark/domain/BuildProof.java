package witnessmark.domain;

import witnessmark.quantity.Moment;

/**
 * A build that was unproven and no longer is: measured, or closed by hand with a reason.
 *
 * @param build which build
 * @param at when
 * @param how measured, or closed by hand
 * @param why what was measured, or why it is taken as proven
 * @param by who signed
 */
public record BuildProof(Id<Build> build, Moment at, ProofKind how, String why, String by) implements Fact {
    public BuildProof {
        if (why.isBlank()) {
            throw new IllegalArgumentException("a build is proven by something");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
