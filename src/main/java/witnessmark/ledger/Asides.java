package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.ledger.result.PutAside;

/** When parts were in quarantine, away or scrapped, part by part. */
final class Asides {
    private final Map<Id<Part>, List<PutAside>> parts = new HashMap<>();

    /** @param facts everything written */
    Asides(Facts facts) {
        facts.of(Quarantine.class).inForce().forEach(entry -> {
            Quarantine fact = entry.fact();
            add(new PutAside(
                    PutAside.Kind.QUARANTINE, fact.part(), fact.member(), fact.from(), fact.to(), fact.why(), entry));
        });
        facts.of(SentOut.class).inForce().forEach(entry -> {
            SentOut fact = entry.fact();
            if (fact.part() != null) {
                add(new PutAside(PutAside.Kind.AWAY, fact.part(), "", fact.from(), fact.back(), fact.sentTo(), entry));
            }
        });
        facts.of(Scrapping.class).inForce().forEach(entry -> {
            Scrapping fact = entry.fact();
            add(new PutAside(PutAside.Kind.SCRAPPED, fact.part(), fact.member(), fact.at(), null, fact.why(), entry));
        });
    }

    private void add(PutAside aside) {
        parts.computeIfAbsent(aside.part(), part -> new ArrayList<>()).add(aside);
    }

    /** Every such time of a part, its members' included. */
    List<PutAside> of(Id<Part> part) {
        return parts.getOrDefault(part, List.of());
    }
}
