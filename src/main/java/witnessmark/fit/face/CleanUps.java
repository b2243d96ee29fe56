package witnessmark.fit.face;

import java.util.Comparator;
import java.util.List;
import witnessmark.domain.SkimPass;
import witnessmark.domain.SkimShadow;
import witnessmark.fit.result.face.CleanUp;
import witnessmark.quantity.Length;

/**
 * Bounds of the deepest low place by passes: it was deeper than what had come off while a shadow was left, and not
 * deeper than what had come off when it was clean (common practice, no source).
 */
public final class CleanUps {
    private CleanUps() {}

    public static CleanUp of(List<SkimPass> passes) {
        long off = 0;
        long over = 0;
        Length clean = null;
        boolean seen = false;
        for (SkimPass pass : passes.stream()
                .sorted(Comparator.comparingInt(SkimPass::number))
                .toList()) {
            off += pass.depth().nanometres();
            if (pass.shadow() == SkimShadow.LEFT) {
                over = off;
                clean = null;
            } else if (pass.shadow() == SkimShadow.CLEAN && clean == null) {
                clean = new Length(off);
            }
            seen |= pass.shadow() != SkimShadow.NOT_SAID;
        }
        return new CleanUp(new Length(over), clean, seen);
    }

    /** What all passes took together. */
    public static Length total(List<SkimPass> passes) {
        return new Length(
                passes.stream().mapToLong(pass -> pass.depth().nanometres()).sum());
    }
}
