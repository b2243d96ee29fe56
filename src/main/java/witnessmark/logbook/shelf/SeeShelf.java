package witnessmark.logbook.shelf;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Marks;
import witnessmark.ledger.Stock;
import witnessmark.ledger.Whereabouts;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.StockLevel;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.View;
import witnessmark.logbook.engines.FittedTime;
import witnessmark.logbook.engines.PartRow;
import witnessmark.logbook.engines.SeePart;
import witnessmark.logbook.standing.MarkOn;

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

    private SeeShelf(View view) {
        this.view = view;
        this.facts = view.facts();
        this.ledger = view.ledger();
        this.marks = new Marks(ledger);
        this.stock = new Stock(facts, ledger.asOf());
    }

    /** Everything in this view. */
    public static Shelf of(View view) {
        return new SeeShelf(view).shelf();
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
        return new ShelfPart(
                row,
                where,
                there,
                there == null ? null : car(there.engine()),
                where.before() == null ? null : SeePart.time(view, where.before()),
                worst(where, row, there),
                keptFor);
    }

    private @Nullable MarkOn worst(Where where, PartRow row, @Nullable FittedTime there) {
        if (where.state() == Where.State.SCRAPPED || where.state() == Where.State.SPLIT) {
            return null;
        }
        return marks.ofPart(where.part().id()).stream()
                .findFirst()
                .map(mark -> on(mark, row, there))
                .orElse(null);
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
        boolean gone =
                part.where().state() == Where.State.SCRAPPED || part.where().state() == Where.State.SPLIT;
        return gone ? Integer.MAX_VALUE : MarkState.NOT_KNOWN.ordinal();
    }
}
