package witnessmark.logbook.faces;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Skim;
import witnessmark.domain.SkimPass;
import witnessmark.domain.Work;
import witnessmark.fit.result.face.CleanUp;
import witnessmark.fit.result.face.SkimEffect;
import witnessmark.quantity.Length;

/**
 * One skim of a part.
 *
 * @param work when, by whom, what came off and what was left
 * @param skim what it found and left, or null when only the work was written down
 * @param passes in their order
 * @param cleanUp how deep the deepest low place was
 * @param removed what came off: as written, else what the passes took; null when neither was written down
 * @param off everything that came off since it was new, or null when not known
 * @param left until the least thickness, below 0 past it, or null when not known
 * @param since what was run since the skim before; null for the first that is written down
 * @param effect what it did, for a head; null for another part, or when nothing is known to have come off
 */
public record SkimLine(
        Entry<Work> work,
        @Nullable Entry<Skim> skim,
        List<SkimPass> passes,
        CleanUp cleanUp,
        @Nullable Length removed,
        @Nullable Length off,
        @Nullable Length left,
        @Nullable RunBetween since,
        @Nullable SkimEffect effect) {
    public SkimLine {
        passes = List.copyOf(passes);
    }
}
