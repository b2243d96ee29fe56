package witnessmark.logbook.sheets;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** One item taken from a batch on the shelf to be fitted: it becomes a part with a mark of its own. */
record FromStock(Entry<StockBatch> batch, String mark) {
    private static final String STOCK = "stock:";

    /** What lies on the shelf of a kind of part, batch by batch. */
    static List<Choice> choices(SheetSight sight, @Nullable PartKind kind) {
        return sight.standing().stock().stream()
                .filter(level ->
                        level.onShelf() > 0 && design(sight, level.batch()).kind() == kind)
                .map(level -> Choice.of(
                        key(level.batch().id()),
                        SheetNote.of(
                                "from_batch",
                                design(sight, level.batch()),
                                level.batch().fact(),
                                level.onShelf())))
                .toList();
    }

    static String key(Id<StockBatch> batch) {
        return STOCK + batch.text();
    }

    static boolean is(String key) {
        return key.startsWith(STOCK);
    }

    /** The batch that is picked. */
    static Optional<Entry<StockBatch>> picked(SheetSight sight, String key) {
        return is(key) ? sight.find(StockBatch.class, key.substring(STOCK.length())) : Optional.empty();
    }

    /** What is picked, and the mark it gets: the one typed, or else the one offered. Null while something is wrong. */
    static @Nullable FromStock read(ReadSheet in, SheetField field, SheetField markField) {
        Entry<StockBatch> batch = picked(in.sight(), in.text(field)).orElse(null);
        if (batch == null) {
            in.wrong(field, ProblemKind.NOT_FOUND, RecordTypes.of(StockBatch.class), in.text(field));
            return null;
        }
        String offered = offered(in.sight(), batch.fact());
        in.note(markField, SheetNote.of("mark_empty", offered));
        String own = in.text(markField);
        if (!own.isEmpty()) {
            SplitOff.free(in, markField, own);
        }
        return new FromStock(batch, own.isEmpty() ? offered : own);
    }

    /** The mark typed on a sheet, or the one offered for what is taken from the shelf. */
    static String mark(SheetTyped typed, SheetSight sight) {
        String own = typed.text(FitPart.MARK);
        return own.isEmpty()
                ? picked(sight, typed.text(FitPart.PART))
                        .map(batch -> offered(sight, batch.fact()))
                        .orElse("")
                : own;
    }

    /** The batch with the first number that no part has. */
    private static String offered(SheetSight sight, StockBatch batch) {
        int number = 1;
        while (sight.facts().of(Part.class).named(batch.batch() + "-" + number).isPresent()) {
            number++;
        }
        return batch.batch() + "-" + number;
    }

    /** The part, and one less on the shelf. */
    Id<Part> make(ReadSheet in, SheetField field, SheetField markField, Moment at) {
        StockBatch from = batch.fact();
        Id<Part> part = in.make(
                markField,
                new Part(
                        mark,
                        from.design(),
                        from.batch(),
                        from.supplier(),
                        null,
                        null,
                        from.useBy(),
                        null,
                        null,
                        null,
                        ""));
        in.make(
                field,
                new StockMove(
                        batch.id(),
                        at,
                        -1,
                        StockMoveKind.USED,
                        part,
                        null,
                        in.sight().who(),
                        ""));
        return part;
    }

    private static PartDesign design(SheetSight sight, Entry<StockBatch> batch) {
        return sight.facts().of(PartDesign.class).get(batch.fact().design());
    }
}
