package witnessmark.ledger;

import java.util.EnumSet;
import java.util.Set;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;

/** What kinds of parts went into an engine in a build, new ones and those that came out and went back in. */
public final class FittedAnew {
    private FittedAnew() {}

    /** Up to the ledger's day. */
    public static Set<PartKind> kinds(LifeLedger ledger, Entry<Build> build) {
        Facts facts = ledger.facts();
        BuildSpan span = BuildSpan.of(ledger, build);
        Set<PartKind> kinds = EnumSet.noneOf(PartKind.class);
        facts.of(Fitment.class)
                .where(span::fitted)
                .forEach(fitment -> kinds.add(facts.of(PartDesign.class)
                        .get(facts.of(Part.class).get(fitment.fact().part()).design())
                        .kind()));
        return kinds;
    }
}
