package witnessmark.logbook.engines;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.ledger.LifeLedger;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** The heads, wherever they are. */
final class Heads {
    private final Facts facts;
    private final LifeLedger ledger;
    private final Moment now;

    Heads(LifeLedger ledger) {
        this.facts = ledger.facts();
        this.ledger = ledger;
        this.now = ledger.asOf().last();
    }

    /** Every head, by its mark. */
    List<HeadRow> all() {
        return facts.of(Part.class)
                .inForce()
                .filter(part -> design(part).kind() == PartKind.HEAD)
                .map(this::row)
                .sorted(Comparator.comparing(row -> row.head().fact().mark()))
                .toList();
    }

    /** The head on an engine, or null when none is fitted. */
    @Nullable
    HeadRow on(Id<Engine> engine) {
        return ledger.fittedAt(engine, now).values().stream()
                .map(fitted -> facts.of(Part.class).find(fitted.fact().part()).orElseThrow())
                .filter(part -> design(part).kind() == PartKind.HEAD)
                .map(this::row)
                .findFirst()
                .orElse(null);
    }

    private HeadRow row(Entry<Part> head) {
        Entry<Fitment> there = ledger.whereIs(head.id(), now).orElse(null);
        Entry<Fitment> last = there != null ? there : last(head.id());
        Id<Engine> engine = last == null ? null : last.fact().engine();
        Entry<Work> skim = ledger.lastWork(head.id(), Set.of(WorkKind.SKIM)).orElse(null);
        return new HeadRow(
                head,
                design(head),
                last,
                engine == null ? null : facts.of(Engine.class).find(engine).orElse(null),
                there == null,
                ledger.firstEntry(head.id()).orElse(null),
                ledger.life(head.id(), Counter.RUNNING),
                skim,
                ledger.sinceWork(head.id(), WorkKind.SKIM, Counter.RUNNING));
    }

    private @Nullable Entry<Fitment> last(Id<Part> part) {
        return facts.of(Fitment.class)
                .inForce()
                .filter(fitment -> fitment.fact().part().equals(part))
                .filter(fitment -> ledger.asOf().counts(fitment.fact().from()))
                .max(Comparator.comparing(fitment -> fitment.fact().from()))
                .orElse(null);
    }

    private PartDesign design(Entry<Part> part) {
        return facts.of(PartDesign.class).get(part.fact().design());
    }
}
