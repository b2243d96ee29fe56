package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Quarantine;
import witnessmark.domain.SentOut;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.quantity.Moment;

/** Something that was out with others came back: what came of it, and whether it may be fitted again. */
public final class CameBack implements LogSheet {
    public static final SheetField OUT = choice("out", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField RESULT = text("out_result", 4);
    public static final SheetField FIT_AGAIN = choice("fit_again", 1);
    public static final SheetField WHY_NOT = text("why_not", 3);
    public static final SheetField SHELF = choice("to_shelf", 1);
    public static final SheetField BATCH = text("batch", 1);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "came_back";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "came_back",
                List.of(OUT, WHEN, WHEN_TIME),
                List.of(RESULT),
                List.of(FIT_AGAIN, WHY_NOT),
                List.of(SHELF, BATCH),
                List.of(BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(
                OUT, OutNow.onlyOne(sight),
                WHEN, sight.today().toString(),
                SHELF, SheetWord.NEW_BATCH.key(),
                BY, sight.who());
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        boolean order = OutNow.find(sight, typed.text(OUT))
                .filter(sent -> sent.design() != null)
                .isPresent();
        return switch (field.key()) {
            case "fit_again" -> !order;
            case "why_not" -> !order && typed.is(FIT_AGAIN, SheetWord.NO);
            case "to_shelf" -> order;
            case "batch" -> order && typed.is(SHELF, SheetWord.NEW_BATCH);
            default -> true;
        };
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "out" -> OutNow.choices(sight);
            case "fit_again" -> List.of(SheetWord.YES.choice(), SheetWord.NO.choice());
            case "to_shelf" -> shelves(sight, typed);
            default -> List.of();
        };
    }

    /** The batches of what was ordered, a new one, and not on the shelf at all. */
    private static List<Choice> shelves(SheetSight sight, SheetTyped typed) {
        List<Choice> choices = new ArrayList<>();
        OutNow.find(sight, typed.text(OUT))
                .map(SentOut::design)
                .ifPresent(design -> choices.addAll(
                        sight.all(StockBatch.class, batch -> batch.design().equals(design))));
        choices.add(SheetWord.NEW_BATCH.choice());
        choices.add(SheetWord.NOT_ON_SHELF.choice());
        return choices;
    }

    @Override
    public void read(ReadSheet in) {
        @Nullable Entry<SentOut> out = OutNow.read(in, OUT);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        if (out == null || when == null) {
            return;
        }
        SentOut sent = out.fact();
        boolean order = sent.design() != null;
        in.note(RESULT, SheetNote.of(order ? "order_result_example" : "out_result_example"));
        String result = order ? in.text(RESULT) : in.needed(RESULT);
        String by = in.needed(BY);
        Moment from = Ending.begun(in, WHEN, sent.from(), when);
        if (!order) {
            in.needed(FIT_AGAIN);
        }
        boolean no = !order && in.is(FIT_AGAIN, SheetWord.NO);
        String why = no ? in.needed(WHY_NOT) : "";
        @Nullable Shelf shelf = order ? shelf(in, sent) : null;
        if (!in.fine() || from == null) {
            return;
        }
        Ending.makeRoom(in, WHEN, sent.part(), sent.from(), from);
        in.change(WHEN, out, back(sent, from, when, result));
        if (no && sent.part() != null) {
            in.make(FIT_AGAIN, new Quarantine(sent.part(), "", when, why, by, null, "", ""));
        } else if (no) {
            in.make(FIT_AGAIN, new Hold(sent.engine(), null, "", when, why, why, by));
        }
        if (shelf != null) {
            Id<StockBatch> batch = shelf.make(in);
            int count = Objects.requireNonNull(sent.count());
            in.make(SHELF, new StockMove(batch, when, count, StockMoveKind.BOUGHT, null, null, by, ""));
        }
    }

    private static SentOut back(SentOut sent, Moment from, Moment when, String result) {
        return new SentOut(
                sent.part(),
                sent.engine(),
                sent.design(),
                sent.count(),
                sent.sentTo(),
                sent.asked(),
                sent.target(),
                from,
                sent.promised(),
                when,
                result,
                sent.by(),
                sent.note());
    }

    /** Where what was ordered is put: a batch there is, or a new one. */
    private record Shelf(
            @Nullable Entry<StockBatch> known, @Nullable StockBatch made) {
        Id<StockBatch> make(ReadSheet in) {
            return known != null ? known.id() : in.make(BATCH, Objects.requireNonNull(made));
        }
    }

    private static @Nullable Shelf shelf(ReadSheet in, SentOut sent) {
        if (in.is(SHELF, SheetWord.NOT_ON_SHELF)) {
            in.note(SHELF, SheetNote.of("not_on_shelf"));
            return null;
        }
        if (!in.is(SHELF, SheetWord.NEW_BATCH)) {
            Entry<StockBatch> known = in.chosen(SHELF, StockBatch.class);
            return known == null ? null : new Shelf(known, null);
        }
        Id<PartDesign> design = Objects.requireNonNull(sent.design());
        String batch = NewStock.newBatch(in, BATCH, design);
        return batch.isEmpty() ? null : new Shelf(null, new StockBatch(design, batch, sent.sentTo(), null, "", 0, ""));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(OutNow.find(sight, typed.text(OUT))
                .map(sent -> OutNow.name(sight, sent))
                .orElse(""));
    }
}
