package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;
import witnessmark.ledger.result.FreePart;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.StockLevel;
import witnessmark.ledger.result.Where;
import witnessmark.quantity.Counter;

/** What lies free on the shelf on the ledger's day and fits a position of an engine. */
public final class FreeParts {
    private static final Comparator<FreePart> LIKELIEST = Comparator.comparing((FreePart free) -> !free.alike())
            .thenComparing(FreePart::held)
            .thenComparing(FreePart::kept)
            .thenComparing(free -> free.running() == null ? 0L : free.running().highest())
            .thenComparing(FreeParts::name);

    private final LifeLedger ledger;
    private final Marks marks;
    private final List<Where> spare;
    private final List<StockLevel> stock;
    private final Map<Id<Part>, List<Entry<Job>>> kept;

    public FreeParts(LifeLedger ledger, Marks marks) {
        this.ledger = ledger;
        this.marks = marks;
        this.spare = new Whereabouts(ledger)
                .all().stream()
                        .filter(where -> where.state() == Where.State.SPARE)
                        .toList();
        Stock all = new Stock(ledger.facts(), ledger.asOf());
        this.stock = all.all();
        this.kept = all.keptParts();
    }

    /**
     * What fits a position, the likeliest first: what belongs there, what nothing holds, what has run least. A member
     * alone is none, since it would stand for its set; nor is what may be fitted once and was.
     */
    public List<FreePart> of(Build build, Entry<Position> position) {
        Id<EngineDesign> engine =
                ledger.facts().of(Engine.class).get(build.engine()).design();
        Predicate<Id<PartDesign>> alike = alike(build.engine(), position.id());
        List<FreePart> all = new ArrayList<>();
        for (Where where : spare) {
            Part part = where.part().fact();
            Entry<PartDesign> design = design(part.design());
            if (design.fact().kind() == position.fact().kind() && part.ofSet() == null && !usedUp(where, design)) {
                all.add(new FreePart(
                        where.part(),
                        null,
                        design,
                        alike.test(design.id()),
                        kept.containsKey(where.part().id()),
                        ledger.life(where.part().id(), Counter.RUNNING),
                        worst(where.part().id(), engine)));
            }
        }
        for (StockLevel level : stock) {
            Entry<PartDesign> design = design(level.batch().fact().design());
            if (design.fact().kind() == position.fact().kind() && level.onShelf() > 0) {
                all.add(new FreePart(null, level, design, alike.test(design.id()), level.free() <= 0, null, null));
            }
        }
        all.sort(LIKELIEST);
        return all;
    }

    private @Nullable Mark worst(Id<Part> part, Id<EngineDesign> into) {
        return marks.ofPart(part, into).stream().findFirst().orElse(null);
    }

    /** What the parts list names there, and where it names nothing what was in it last. */
    private Predicate<Id<PartDesign>> alike(Id<Engine> engine, Id<Position> position) {
        Optional<Id<PartDesign>> listed =
                PartsList.names(ledger.facts(), engine, position, ledger.asOf().day());
        Optional<Id<PartDesign>> last = ledger
                .facts()
                .of(Fitment.class)
                .where(fitment -> engine.equals(fitment.engine())
                        && fitment.position().equals(position)
                        && ledger.asOf().counts(fitment.from()))
                .stream()
                .max(Comparator.comparing(fitment -> fitment.fact().from()))
                .map(fitment ->
                        ledger.facts().of(Part.class).get(fitment.fact().part()).design());
        return design -> listed.or(() -> last).filter(design::equals).isPresent();
    }

    private static boolean usedUp(Where where, Entry<PartDesign> design) {
        return design.fact().singleUse() && where.before() != null;
    }

    private Entry<PartDesign> design(Id<PartDesign> id) {
        return ledger.facts().of(PartDesign.class).find(id).orElseThrow();
    }

    private static String name(FreePart free) {
        Entry<Part> part = free.part();
        StockLevel batch = free.batch();
        return part != null
                ? part.fact().mark()
                : batch == null ? "" : batch.batch().fact().batch();
    }
}
