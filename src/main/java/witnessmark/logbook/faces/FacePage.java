package witnessmark.logbook.faces;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceKind;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.fit.result.face.Face;
import witnessmark.ledger.result.Stay;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;

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
 * @param stays where it was fitted, in their order
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
        RunBetween since,
        List<Stay> stays) {
    public FacePage {
        looks = List.copyOf(looks);
        skims = List.copyOf(skims);
        stays = List.copyOf(stays);
    }

    /** What may still come off, below 0 past the least; null when that is not known. */
    public @Nullable Length left() {
        return thickness == null || limits.least() == null
                ? null
                : new Length(thickness.nanometres() - limits.least().nanometres());
    }

    /** The face of a part of a kind that nobody looked at yet; of a gasket the side to the head. */
    public static FaceKind face(PartKind kind) {
        return kind == PartKind.BLOCK ? FaceKind.DECK : kind == PartKind.HEAD ? FaceKind.HEAD : FaceKind.GASKET_TO_HEAD;
    }

    /** The look that comes up first: the last that measured something, else the last one. */
    public Optional<LookLine> foremost() {
        return lastMeasured().or(() -> looks.stream().findFirst());
    }

    /** The last look at which a grid or a low area was measured. */
    public Optional<LookLine> lastMeasured() {
        return looks.stream().filter(look -> !look.low().isEmpty()).findFirst();
    }

    /** What a look is held against unasked: the last look before it at the same face that found something low. */
    public Optional<LookLine> behind(LookLine look) {
        return looks.stream()
                .filter(each -> each.look().fact().face() == look.look().fact().face()
                        && each.look().fact().at().isBefore(look.look().fact().at())
                        && !each.findings().isEmpty())
                .findFirst();
    }

    /** Since when it lay against another for the last time, in the same engine; empty where it never did. */
    public Optional<Moment> against(FacePage other) {
        return stays.stream()
                .flatMap(mine -> other.stays().stream()
                        .filter(its -> mine.fitment().fact().engine() != null
                                && mine.fitment()
                                        .fact()
                                        .engine()
                                        .equals(its.fitment().fact().engine())
                                && isBefore(mine.from(), its.to())
                                && isBefore(its.from(), mine.to()))
                        .map(its -> mine.from().isAfter(its.from()) ? mine.from() : its.from()))
                .max(Comparator.naturalOrder());
    }

    private static boolean isBefore(Moment from, @Nullable Moment to) {
        return to == null || from.isBefore(to);
    }
}
