package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
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
import witnessmark.domain.PartKind;
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
            .thenComparing(free -> !free.marked().isEmpty())
            .thenComparing(FreePart::kept)
            .thenComparing(free -> free.running() == null ? 0L : free.running().highest())
            .thenComparing(FreeParts::name);

    private final LifeLedger ledger;
    private final Marks marks;
    private final FoundMarked marked;
    private final Map<PartKind, List<Where>> spare;
    private final Map<PartKind, List<StockLevel>> stock;
    private final Map<Id<Part>, List<Entry<Job>>> kept;
    private final Map<Kin, List<FreePart>> found = new HashMap<>();
    private final Map<Id<Engine>, Map<Id<Position>, Id<PartDesign>>> last = new HashMap<>();

    /** What is free of a kind is the same for all positions of an engine's design; only what belongs there is not. */
    private record Kin(Id<EngineDesign> engine, PartKind kind) {}

    public FreeParts(LifeLedger ledger, Marks marks) {
        this.ledger = ledger;
        this.marks = marks;
        this.marked = new FoundMarked(ledger);
        this.spare = new Whereabouts(ledger)
                .all().stream()
                        .filter(where -> where.state() == Where.State.SPARE)
                        .collect(Collectors.groupingBy(
                                where -> kind(where.part().fact().design())));
        Stock all = new Stock(ledger.facts(), ledger.asOf());
        this.stock = all.all().stream()
                .collect(
                        Collectors.groupingBy(level -> kind(level.batch().fact().design())));
        this.kept = all.keptParts();
    }

    /**
     * What fits a position, the likeliest first: what belongs there, what nothing holds, what nothing was found on that has gone far, what has run least. A member
     * alone is none, since it would stand for its set; nor is what may be fitted once and was.
     */
    public List<FreePart> of(Build build, Entry<Position> position) {
        Id<EngineDesign> engine =
                ledger.facts().of(Engine.class).get(build.engine()).design();
        Predicate<Id<PartDesign>> alike = alike(build.engine(), position.id());
        return found.computeIfAbsent(new Kin(engine, position.fact().kind()), this::found).stream()
                .map(free -> alike.test(free.design().id()) ? belonging(free) : free)
                .sorted(LIKELIEST)
                .toList();
    }

    private static FreePart belonging(FreePart free) {
        return new FreePart(
                free.part(),
                free.batch(),
                free.design(),
                true,
                free.kept(),
                free.running(),
                free.marked(),
                free.worst());
    }

    private List<FreePart> found(Kin kin) {
        List<FreePart> all = new ArrayList<>();
        for (Where where : spare.getOrDefault(kin.kind(), List.of())) {
            Part part = where.part().fact();
            Entry<PartDesign> design = design(part.design());
            if (part.ofSet() == null && !usedUp(where, design)) {
                Id<Part> id = where.part().id();
                all.add(new FreePart(
                        where.part(),
                        null,
                        design,
                        false,
                        kept.containsKey(id),
                        ledger.life(id, Counter.RUNNING),
                        marked.on(id),
                        worst(id, kin.engine())));
            }
        }
        for (StockLevel level : stock.getOrDefault(kin.kind(), List.of())) {
            if (level.onShelf() > 0) {
                Entry<PartDesign> design = design(level.batch().fact().design());
                all.add(new FreePart(null, level, design, false, level.free() <= 0, null, List.of(), null));
            }
        }
        return all;
    }

    private @Nullable Mark worst(Id<Part> part, Id<EngineDesign> into) {
        return marks.ofPart(part, into).stream().findFirst().orElse(null);
    }

    /** What the parts list names there, and where it names nothing what was in it last. */
    private Predicate<Id<PartDesign>> alike(Id<Engine> engine, Id<Position> position) {
        Id<PartDesign> there = PartsList.names(
                        ledger.facts(), engine, position, ledger.asOf().day())
                .orElseGet(() -> last.computeIfAbsent(engine, this::last).get(position));
        return design -> design.equals(there);
    }

    /** The design of what was in each position of an engine last. */
    private Map<Id<Position>, Id<PartDesign>> last(Id<Engine> engine) {
        Map<Id<Position>, Id<PartDesign>> designs = new HashMap<>();
        ledger.facts()
                .of(Fitment.class)
                .inForce()
                .map(Entry::fact)
                .filter(fitment ->
                        engine.equals(fitment.engine()) && ledger.asOf().counts(fitment.from()))
                .sorted(Comparator.comparing(Fitment::from))
                .forEach(fitment -> designs.put(
                        fitment.position(),
                        ledger.facts().of(Part.class).get(fitment.part()).design()));
        return designs;
    }

    private static boolean usedUp(Where where, Entry<PartDesign> design) {
        return design.fact().singleUse() && where.before() != null;
    }

    private PartKind kind(Id<PartDesign> id) {
        return design(id).fact().kind();
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
