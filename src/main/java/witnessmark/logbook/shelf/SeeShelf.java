package witnessmark.logbook.shelf;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.SetMember;
import witnessmark.domain.WorkKind;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.Marks;
import witnessmark.ledger.Stock;
import witnessmark.ledger.Whereabouts;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.StockLevel;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.View;
import witnessmark.logbook.engines.FittedTime;
import witnessmark.logbook.engines.PartRow;
import witnessmark.logbook.engines.SeePart;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.trials.SeeTrials;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** Sees which part is where, how much is left in it, and what stock there is, as of the day looked at. Reads only. */
public final class SeeShelf {
    private static final Comparator<ShelfPart> HAND_FIRST = Comparator.comparing(
                    (ShelfPart part) -> !part.where().late())
            .thenComparing(part -> !part.where().undecided())
            .thenComparingInt(SeeShelf::weight)
            .thenComparing(part -> part.where().state())
            .thenComparing(ShelfPart::mark);

    private static final Comparator<StockRow> SHORT_FIRST = Comparator.comparing(
                    (StockRow row) -> !row.level().isShort())
            .thenComparing(row -> !row.holds())
            .thenComparing(row -> row.design().name())
            .thenComparing(row -> row.level().batch().fact().batch());

    private final View view;
    private final Facts facts;
    private final LifeLedger ledger;
    private final Marks marks;
    private final Stock stock;
    private final Set<Id<Part>> sets;
    private final Set<Id<PartDesign>> onTrial;
    private final Map<Id<Engine>, Optional<Moment>> rebuilt = new HashMap<>();

    private SeeShelf(View view) {
        this.view = view;
        this.facts = view.facts();
        this.ledger = view.ledger();
        this.marks = new Marks(ledger);
        this.stock = new Stock(facts, ledger.asOf());
        this.onTrial = SeeTrials.designs(view);
        this.sets = facts.of(SetMember.class)
                .inForce()
                .map(member -> member.fact().set())
                .collect(Collectors.toSet());
    }

    /** Everything in this view. */
    public static Shelf of(View view) {
        return new SeeShelf(view).shelf();
    }

    /** How many things need a hand, as {@link Shelf#needHand}, without working out what is left in the parts. */
    public static int needHand(View view) {
        long parts = new Whereabouts(view.ledger())
                .all().stream().filter(Where::needsHand).count();
        return Math.toIntExact(
                parts + shortDesigns(new Stock(view.facts(), view.ledger().asOf()).all().stream()));
    }

    static long shortDesigns(Stream<StockLevel> stock) {
        return stock.filter(StockLevel::isShort)
                .map(level -> level.batch().fact().design())
                .distinct()
                .count();
    }

    private Shelf shelf() {
        Map<Id<Part>, List<Entry<Job>>> kept = stock.keptParts();
        List<ShelfPart> parts = new Whereabouts(ledger)
                .all().stream()
                        .map(where -> part(where, kept.getOrDefault(where.part().id(), List.of())))
                        .sorted(HAND_FIRST)
                        .toList();
        List<StockRow> rows =
                stock.all().stream().map(this::row).sorted(SHORT_FIRST).toList();
        return new Shelf(view.day(), view.readOnly(), parts, rows);
    }

    private StockRow row(StockLevel level) {
        return new StockRow(
                level, facts.of(PartDesign.class).get(level.batch().fact().design()));
    }

    private ShelfPart part(Where where, List<Entry<Job>> keptFor) {
        PartRow row = SeePart.row(view, where.part());
        FittedTime last = row.last();
        FittedTime there = last != null && last.lasts() ? last : null;
        boolean gone = where.state() == Where.State.SCRAPPED || where.state() == Where.State.SPLIT;
        List<Mark> all = gone ? List.of() : marks.ofPart(where.part().id());
        return new ShelfPart(
                row,
                where,
                there,
                there == null ? null : car(there.engine()),
                where.before() == null ? null : SeePart.time(view, where.before()),
                all.isEmpty() ? null : on(all.get(0), row, there),
                counted(all),
                since(row, there),
                sets.contains(where.part().id()) && !gone,
                keptFor,
                onTrial.contains(row.part().fact().design()));
    }

    /** A part is looked after by its running time; what else its limits count stands beside it. */
    private static List<LimitUse> counted(List<Mark> worstFirst) {
        Map<Counter, LimitUse> uses = new EnumMap<>(Counter.class);
        for (Mark mark : worstFirst) {
            if (mark.reason() instanceof LimitUse use && use.used().counter() != Counter.RUNNING) {
                uses.putIfAbsent(use.used().counter(), use);
            }
        }
        return List.copyOf(uses.values());
    }

    private @Nullable SinceWork since(PartRow row, @Nullable FittedTime there) {
        Id<Part> part = row.part().id();
        if (row.design().kind() == PartKind.HEAD) {
            Moment skimmed = ledger.lastWork(part, Set.of(WorkKind.SKIM))
                    .map(skim -> skim.fact().at())
                    .orElse(null);
            return new SinceWork(SinceWork.Work.SKIM, skimmed, ledger.sinceWork(part, WorkKind.SKIM, Counter.RUNNING));
        }
        Id<Engine> engine = there == null ? null : there.engine();
        if (engine == null) {
            return null;
        }
        Moment closed = rebuilt.computeIfAbsent(
                        engine,
                        id -> ledger.lastClosed(id, Limits.REBUILD)
                                .map(build -> build.fact().closed()))
                .orElse(null);
        return new SinceWork(
                SinceWork.Work.REBUILD,
                closed,
                closed == null ? row.running() : ledger.since(part, Counter.RUNNING, closed));
    }

    private MarkOn on(Mark mark, PartRow row, @Nullable FittedTime there) {
        return new MarkOn(
                mark,
                row.part().fact().mark(),
                row.design().kind(),
                there == null || there.engine() == null ? null : there.place(),
                mark.car() == null ? null : facts.of(Car.class).get(mark.car()).name());
    }

    private @Nullable String car(@Nullable Id<Engine> engine) {
        return engine == null
                ? null
                : ledger.carOf(engine, ledger.asOf().last())
                        .map(stay -> facts.of(Car.class).get(stay.fact().car()).name())
                        .orElse(null);
    }

    /** What stands worst first; what nothing is held against after what may be worse than it looks. */
    private static int weight(ShelfPart part) {
        if (part.worst() != null) {
            return part.worst().mark().weight();
        }
        return part.gone() ? Integer.MAX_VALUE : MarkState.NOT_KNOWN.ordinal();
    }
}
