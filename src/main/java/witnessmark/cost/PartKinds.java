package witnessmark.cost;

import java.util.List;
import java.util.Optional;
import witnessmark.domain.CostLine;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartHarm;
import witnessmark.domain.PartKind;
import witnessmark.domain.Work;

/** Which kinds of part failures and costs are about. */
final class PartKinds {
    private final Facts facts;

    PartKinds(Facts facts) {
        this.facts = facts;
    }

    /** The kinds of part that failed in an incident; none where nobody has said. */
    List<PartKind> failed(Id<Incident> id) {
        return facts
                .of(IncidentPart.class)
                .where(named -> named.incident().equals(id) && named.harm() == PartHarm.FAILED)
                .stream()
                .map(named -> of(named.fact().part()))
                .distinct()
                .toList();
    }

    /** The kind of the part a cost is the price of, or whose work it pays for; empty where it names none. */
    Optional<PartKind> of(CostLine line) {
        if (line.part() != null) {
            return Optional.of(of(line.part()));
        }
        return Optional.ofNullable(line.work())
                .flatMap(id -> facts.of(Work.class).find(id))
                .map(work -> work.fact().part())
                .map(this::of);
    }

    private PartKind of(Id<Part> part) {
        return facts.of(PartDesign.class)
                .get(facts.of(Part.class).get(part).design())
                .kind();
    }
}
