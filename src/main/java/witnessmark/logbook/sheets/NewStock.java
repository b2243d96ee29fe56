package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.PartDesign;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** A new batch on the shelf, with how many there are at first. */
public final class NewStock implements LogSheet {
    public static final SheetField BATCH = text("batch", 1);
    public static final SheetField COUNT = text("count", 1);
    public static final SheetField LEAST = text("least", 1);
    public static final SheetField USE_BY = of("use_by", FieldKind.DAY);
    public static final SheetField SHELF = text("shelf", 1);
    public static final SheetField SUPPLIER = text("supplier", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);
    public static final SheetField NOTE = text("note", 2);

    @Override
    public String key() {
        return "new_stock";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of(
                        "stock_batch", NewDesign.first(BATCH), NewDesign.second(), List.of(SUPPLIER, SHELF, USE_BY)),
                SheetGroup.of("stock_count", List.of(COUNT, WHEN, WHEN_TIME, LEAST), List.of(BY, NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        NewDesign.fresh(out, sight);
        out.put(WHEN, sight.today().toString());
        out.put(BY, sight.who());
        return out;
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(SUPPLIER, SHELF, WHEN, WHEN_TIME, BY);
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !NewDesign.has(field) || NewDesign.asks(field, typed);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return NewDesign.choices(field, sight, design -> true);
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        @Nullable NewDesign design = NewDesign.read(in, null);
        Entry<PartDesign> known = design == null ? null : design.known();
        in.note(BATCH, SheetNote.of("batch_example"));
        String batch = newBatch(in, BATCH, known == null ? null : known.id());
        Integer count = values.atLeast(COUNT, 0);
        Moment when = values.moment(WHEN, WHEN_TIME);
        @Nullable Integer least = in.text(LEAST).isEmpty() ? Integer.valueOf(0) : values.count(LEAST);
        in.note(LEAST, SheetNote.of("least_empty"));
        in.note(USE_BY, SheetNote.of("if_printed"));
        LocalDate useBy = values.dayAhead(USE_BY);
        if (!in.fine() || design == null || count == null || when == null || least == null) {
            return;
        }
        Id<StockBatch> stock = in.make(
                BATCH,
                new StockBatch(design.make(in), batch, in.text(SUPPLIER), useBy, in.text(SHELF), least, in.text(NOTE)));
        if (count > 0) {
            in.make(COUNT, new StockMove(stock, when, count, StockMoveKind.BOUGHT, null, null, in.text(BY), ""));
        }
    }

    /** A word for a new batch that no other of the design has; empty, and noted, when there is none. */
    static String newBatch(ReadSheet in, SheetField field, @Nullable Id<PartDesign> design) {
        String batch = in.needed(field);
        boolean taken = !batch.isEmpty()
                && !in.sight()
                        .facts()
                        .of(StockBatch.class)
                        .where(each -> each.design().equals(design)
                                && Words.plain(each.batch()).equals(Words.plain(batch)))
                        .isEmpty();
        if (taken) {
            in.wrong(field, ProblemKind.NAME_TAKEN, RecordTypes.of(StockBatch.class), batch);
        }
        return taken ? "" : batch;
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(NewDesign.name(typed, sight), typed.text(BATCH));
    }
}
