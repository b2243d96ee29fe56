package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;
import witnessmark.ledger.result.FreePart;
import witnessmark.ledger.result.ProposedPart;
import witnessmark.ledger.result.StockLevel;

/**
 * The parts list of one build as a proposal for another: position by position what of the same make is free. What is held
 * or past a limit is not proposed, nor what was found far gone, nor what a job wants. Nothing else of a build can be copied.
 */
public final class PartsOfBuild {
    private final LifeLedger ledger;
    private final FreeParts free;

    public PartsOfBuild(LifeLedger ledger, FreeParts free) {
        this.ledger = ledger;
        this.free = free;
    }

    /**
     * @param from the build whose parts list is copied
     * @param to the build it is copied to, of an engine of the same design
     * @param wanted the positions of that to be filled, in their turn
     * @param taken text of the identities of parts that are picked already
     */
    public List<ProposedPart> copy(Entry<Build> from, Build to, List<Entry<Position>> wanted, Set<String> taken) {
        Map<Id<Position>, Entry<Fitment>> there =
                ledger.fittedAt(from.fact().engine(), BuildSpan.of(ledger, from).to());
        Set<String> picked = new HashSet<>(taken);
        Map<Id<?>, Integer> used = new HashMap<>();
        List<ProposedPart> all = new ArrayList<>();
        for (Entry<Position> position : wanted) {
            Entry<Fitment> was = there.get(position.id());
            if (was == null) {
                continue;
            }
            Id<PartDesign> design =
                    ledger.facts().of(Part.class).get(was.fact().part()).design();
            @Nullable
            FreePart found = free.of(to, position).stream()
                    .filter(each -> each.design().id().equals(design)
                            && !each.held()
                            && !each.kept()
                            && each.marked().isEmpty())
                    .filter(each -> left(each, picked, used))
                    .findFirst()
                    .orElse(null);
            take(found, picked, used);
            all.add(new ProposedPart(
                    position, ledger.facts().of(PartDesign.class).find(design).orElseThrow(), found));
        }
        return all;
    }

    private static boolean left(FreePart each, Set<String> picked, Map<Id<?>, Integer> used) {
        Entry<Part> part = each.part();
        StockLevel batch = each.batch();
        return part != null
                ? !picked.contains(part.id().text())
                : batch != null && used.getOrDefault(batch.batch().id(), 0) < batch.free();
    }

    private static void take(@Nullable FreePart found, Set<String> picked, Map<Id<?>, Integer> used) {
        if (found != null && found.part() != null) {
            picked.add(found.part().id().text());
        } else if (found != null && found.batch() != null) {
            used.merge(found.batch().batch().id(), 1, Integer::sum);
        }
    }
}
