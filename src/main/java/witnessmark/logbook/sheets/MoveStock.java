package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.PartDesign;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.ledger.result.StockLevel;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Items came, were used, were put back, were spoilt, or the shelf was counted. */
public final class MoveStock implements LogSheet {
    public static final SheetField STOCK = choice("stock", 2);
    public static final SheetField KIND = choice("stock_kind", 1);
    public static final SheetField COUNT = text("count", 1);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField JOB = choice("for_job", 2);
    public static final SheetField BY = text("by", 1);
    public static final SheetField NOTE = text("note", 3);

    @Override
    public String key() {
        return "move_stock";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "move_stock", List.of(STOCK, KIND, COUNT), List.of(WHEN, WHEN_TIME, JOB), List.of(BY, NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(
                KIND, StockMoveKind.USED.code(), JOB, "", WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(KIND, WHEN, WHEN_TIME, JOB, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(JOB) || (forJob(typed.text(KIND)) && !jobs(sight).isEmpty());
    }

    private static boolean forJob(String kind) {
        return kind.equals(StockMoveKind.USED.code()) || kind.equals(StockMoveKind.PUT_BACK.code());
    }

    private static List<Entry<Job>> jobs(SheetSight sight) {
        return sight.facts().of(Job.class).where(job -> job.done() == null);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "stock" ->
                sight.standing().stock().stream()
                        .map(level -> Choice.of(level.batch().id().text(), line(sight, level)))
                        .toList();
            case "stock_kind" -> Choice.words(StockMoveKind.values());
            case "for_job" -> {
                List<Choice> choices = new ArrayList<>();
                choices.add(SheetWord.NONE.choice());
                jobs(sight).forEach(job -> choices.add(JobSubject.choice(sight, job)));
                yield choices;
            }
            default -> List.of();
        };
    }

    private static SheetNote line(SheetSight sight, StockLevel level) {
        StockBatch batch = level.batch().fact();
        return SheetNote.of(
                "stock_there", sight.facts().of(PartDesign.class).get(batch.design()), batch, level.onShelf());
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        @Nullable Entry<StockBatch> stock = in.chosen(STOCK, StockBatch.class);
        StockMoveKind kind = in.word(KIND, StockMoveKind.class);
        boolean counted = kind == StockMoveKind.COUNTED;
        Integer count = values.atLeast(COUNT, counted ? 0 : 1);
        Moment when = values.moment(WHEN, WHEN_TIME);
        in.blame(COUNT, ProblemKind.STOCK_BELOW_NOTHING);
        if (stock == null || kind == null || when == null) {
            return;
        }
        int there = there(in.sight(), stock.id(), when);
        in.note(COUNT, SheetNote.of("on_shelf", there));
        if (count == null) {
            return;
        }
        int change = change(kind, count, there);
        if (counted && change == 0) {
            in.wrong(COUNT, ProblemKind.AS_WRITTEN_ALREADY, stock.fact().batch(), count);
        }
        @Nullable
        Entry<Job> job =
                asks(JOB, in.typed(), in.sight()) && !in.text(JOB).isEmpty() ? in.chosen(JOB, Job.class) : null;
        if (in.fine()) {
            if (counted) {
                in.note(COUNT, SheetNote.echo(change > 0 ? "count_more" : "count_fewer", there, Math.abs(change)));
            }
            in.make(
                    COUNT,
                    new StockMove(
                            stock.id(),
                            when,
                            change,
                            kind,
                            null,
                            job == null ? null : job.id(),
                            in.text(BY),
                            in.text(NOTE)));
        }
    }

    private static int change(StockMoveKind kind, int count, int there) {
        return switch (kind) {
            case BOUGHT, PUT_BACK -> count;
            case USED, SPOILT -> -count;
            case COUNTED -> count - there;
        };
    }

    /** What lay there at a moment, by what is written. */
    private static int there(SheetSight sight, Id<StockBatch> stock, Moment at) {
        return sight
                .facts()
                .of(StockMove.class)
                .where(move -> move.stock().equals(stock) && !move.at().isAfter(at))
                .stream()
                .mapToInt(move -> move.fact().change())
                .sum();
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(StockBatch.class, typed.text(STOCK))
                .map(batch -> sight.name(PartDesign.class, batch.fact().design()) + " "
                        + batch.fact().batch())
                .orElse(""));
    }
}
