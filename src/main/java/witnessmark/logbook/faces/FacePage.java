package witnessmark.logbook.faces;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.fit.result.face.Face;
import witnessmark.quantity.Length;

/**
 * The faces of one head, gasket or block.
 *
 * @param part which one
 * @param kind of which kind
 * @param engine the engine it is in, or was in last; null when it was in none
 * @param design whose face it is, or null when that is not known
 * @param face its outline, or null while nobody wrote it down
 * @param limits what it may be
 * @param looks every look, the latest first
 * @param skims every skim, the latest first
 * @param thickness the last thickness written down, the least of the corners; null when none is
 * @param since what was run since the last skim; its whole life while there was none
 */
public record FacePage(
        Entry<Part> part,
        PartKind kind,
        @Nullable Entry<Engine> engine,
        @Nullable Entry<EngineDesign> design,
        @Nullable Face face,
        FaceLimits limits,
        List<LookLine> looks,
        List<SkimLine> skims,
        @Nullable Length thickness,
        RunBetween since) {
    public FacePage {
        looks = List.copyOf(looks);
        skims = List.copyOf(skims);
    }

    /** What may still come off, below 0 past the least; null when that is not known. */
    public @Nullable Length left() {
        return thickness == null || limits.least() == null
                ? null
                : new Length(thickness.nanometres() - limits.least().nanometres());
    }

    /** The last look at which a grid or a low area was measured. */
    public Optional<LookLine> lastMeasured() {
        return looks.stream().filter(look -> !look.low().isEmpty()).findFirst();
    }
}
