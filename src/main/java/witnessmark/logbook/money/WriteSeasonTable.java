package witnessmark.logbook.money;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.Car;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncomeLine;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.TableFiles;
import witnessmark.logbook.port.TableFiles.Cell;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Money;

/**
 * Writes a season as one table: every cost as it is counted, what was planned and what came in. The first column says
 * which of them a row is, so that a bookkeeper filters by it; the rows {@code cost} with a failure add up to what failures
 * cost. Reads and computes; off the event thread.
 */
public final class WriteSeasonTable {
    private static final List<String> HEADINGS = List.of(
            "row",
            "day",
            "what",
            "kind",
            "counted_as",
            "event",
            "car",
            "failure",
            "amount",
            "currency",
            "paid_amount",
            "paid_currency",
            "rate",
            "due_anyway",
            "either_way",
            "paid_to",
            "invoice",
            "note");

    private final TableFiles files;

    public WriteSeasonTable(TableFiles files) {
        this.files = files;
    }

    /**
     * Writes the season asked about, as of the day looked at.
     *
     * @return how many rows it has
     */
    public Outcome<Integer> write(Desk desk, SeasonAsked asked, Path file) {
        return files.write(HEADINGS, rows(desk.view(), asked), file);
    }

    static List<List<Cell>> rows(View view, SeasonAsked asked) {
        Facts facts = view.facts();
        SeasonSpan season = SeeSeason.named(view, asked.season()).orElseGet(() -> SeeSeason.now(view));
        List<List<Cell>> rows = new ArrayList<>();
        for (Piece piece : SeeSeason.pieces(view, season)) {
            rows.add(cost(facts, piece));
        }
        facts.of(BudgetLine.class).where(line -> season.has(line.day())).forEach(line -> rows.add(budget(facts, line)));
        facts.of(IncomeLine.class)
                .where(line -> season.has(line.day()) && !line.day().isAfter(view.day()))
                .forEach(line -> rows.add(income(facts, line)));
        return rows;
    }

    private static List<Cell> cost(Facts facts, Piece piece) {
        CostLine line = facts.of(CostLine.class).get(piece.line());
        return List.of(
                Cell.figure("cost"),
                day(piece.day()),
                Cell.words(line.what()),
                Cell.figure(line.category().code()),
                Cell.figure(piece.place().name().toLowerCase(Locale.ROOT).replace('_', ' ')),
                name(facts, Event.class, piece.event()),
                name(facts, Car.class, piece.car()),
                name(facts, Incident.class, piece.incident()),
                amount(piece.amount()),
                currency(piece.amount()),
                amount(line.paid()),
                currency(line.paid()),
                Cell.figure(line.rate() == null ? "" : line.rate().toPlainString()),
                yes(piece.planned()),
                yes(piece.allocated()),
                Cell.words(line.supplier()),
                Cell.words(line.invoice()),
                Cell.words(line.note()));
    }

    private static List<Cell> budget(Facts facts, Entry<BudgetLine> entry) {
        BudgetLine line = entry.fact();
        return plain(
                "budget",
                line.day(),
                "",
                line.category().code(),
                name(facts, Event.class, line.event()),
                name(facts, Car.class, line.car()),
                line.amount(),
                line.rate() == null ? "" : line.rate().toPlainString(),
                "",
                line.note());
    }

    private static List<Cell> income(Facts facts, Entry<IncomeLine> entry) {
        IncomeLine line = entry.fact();
        return plain(
                "income",
                line.day(),
                line.what(),
                line.kind().code(),
                name(facts, Event.class, line.event()),
                name(facts, Car.class, line.car()),
                line.amount(),
                line.rate() == null ? "" : line.rate().toPlainString(),
                line.from(),
                line.note());
    }

    private static List<Cell> plain(
            String row,
            LocalDate day,
            String what,
            String kind,
            Cell event,
            Cell car,
            Money amount,
            String rate,
            String whom,
            String note) {
        Cell none = Cell.figure("");
        return List.of(
                Cell.figure(row),
                day(day),
                Cell.words(what),
                Cell.figure(kind),
                none,
                event,
                car,
                none,
                amount(amount),
                currency(amount),
                none,
                none,
                Cell.figure(rate),
                none,
                none,
                Cell.words(whom),
                none,
                Cell.words(note));
    }

    private static Cell day(LocalDate day) {
        return Cell.figure(day.toString());
    }

    private static Cell amount(Money money) {
        return Cell.figure(money.units().toPlainString());
    }

    private static Cell currency(Money money) {
        return Cell.figure(money.currency().getCurrencyCode());
    }

    private static Cell yes(boolean yes) {
        return Cell.figure(yes ? "yes" : "");
    }

    private static <F extends Fact> Cell name(Facts facts, Class<F> kind, @Nullable Id<F> id) {
        return Cell.words(Optional.ofNullable(id)
                .flatMap(facts.of(kind)::find)
                .map(entry -> String.valueOf(entry.fact().knownAs()))
                .orElse(""));
    }
}
