package witnessmark.logbook.sheets;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.SeeFaces;

/** Parts that have a face, to pick from. */
final class FaceParts {
    private FaceParts() {}

    /** Every part of those kinds that is not out of use, each with where it is. */
    static List<Choice> choices(SheetSight sight, Set<PartKind> kinds) {
        return PartsNow.choices(sight, where -> PartsNow.inUse(where) && kinds.contains(kind(sight, where)));
    }

    private static PartKind kind(SheetSight sight, Where where) {
        return sight.facts()
                .of(PartDesign.class)
                .get(where.part().fact().design())
                .kind();
    }

    /** The part of that kind in an engine; empty when none is fitted. */
    static Optional<Id<Part>> in(SheetSight sight, Id<Engine> engine, PartKind kind) {
        return sight.view().ledger().fittedAt(engine, sight.now()).values().stream()
                .map(fitment -> fitment.fact().part())
                .filter(part -> sight.facts()
                                .of(PartDesign.class)
                                .get(sight.facts().of(Part.class).get(part).design())
                                .kind()
                        == kind)
                .findFirst();
    }

    static Optional<FacePage> page(SheetSight sight, @Nullable Entry<Part> part) {
        return part == null ? Optional.empty() : SeeFaces.of(sight.view(), part.id());
    }
}
