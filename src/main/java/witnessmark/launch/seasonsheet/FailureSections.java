package witnessmark.launch.seasonsheet;

import static witnessmark.launch.seasonsheet.SeasonInk.line;
import static witnessmark.launch.seasonsheet.SeasonInk.total;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Place;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.domain.Prevention;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.logbook.money.SeasonSheetFacts;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;

/** Words failures in their columns, dearest first, and beside each what would have prevented it. */
final class FailureSections {
    private static final long MINUTE = 60_000;

    private final SeasonInk ink;
    private final SeasonPage page;
    private final Money none;

    FailureSections(SeasonInk ink, SeasonSheetFacts sheet) {
        this.ink = ink;
        this.page = sheet.page();
        this.none = Money.none(page.total().currency());
    }

    /** The name of the lines behind a failure: {@code A1}; empty where it cost nothing. */
    static String letter(List<Failure> failures, Failure failure) {
        List<Failure> costly = costly(failures);
        int at = costly.indexOf(failure);
        return at < 0 ? "" : "A" + (at + 1);
    }

    /** Failures with a line behind them. */
    static List<Failure> costly(List<Failure> failures) {
        return failures.stream()
                .filter(failure -> !failure.cost().pieces().isEmpty())
                .toList();
    }

    /** Every failure in the columns that add up to its total. */
    Section failures() {
        List<Place> places = page.switches().columns();
        List<Column> columns = new ArrayList<>();
        columns.add(Column.mark(ink.say("lines")));
        columns.add(Column.mark(ink.texts().get("season.column.day")));
        columns.add(Column.name(ink.texts().get("season.column.failure"), 10));
        places.forEach(place -> columns.add(Column.figure(ink.money().column(place))));
        columns.add(Column.figure(ink.say("together")));
        List<Row> rows = new ArrayList<>();
        for (Failure failure : page.failures()) {
            Incident incident = failure.incident().fact();
            List<String> cells = new ArrayList<>(List.of(
                    letter(page.failures(), failure),
                    ink.day(incident.at().day()),
                    ink.season().name(incident)));
            places.forEach(place -> cells.add(ink.money().in(place, failure.cost(), page.switches())));
            cells.add(ink.money().together(failure.cost(), page.switches()));
            rows.add(line(cells.toArray(String[]::new)));
        }
        List<String> sums = new ArrayList<>(List.of("", "", ink.say("together")));
        places.forEach(place -> sums.add(ink.amount(column(place))));
        sums.add(ink.amount(page.total()));
        if (!rows.isEmpty()) {
            rows.add(total(sums.toArray(String[]::new)));
        }
        List<String> leftOut =
                ink.season().leftOut(page.costs(), page.switches()).stream().toList();
        return new Section(ink.say("failures"), columns, rows, leftOut);
    }

    private Money column(Place place) {
        return page.failures().stream()
                .map(failure -> failure.cost().column(place, page.switches()))
                .reduce(none, Money::plus);
    }

    /** What each failure cost beside what would have kept it from happening. */
    Section prevention() {
        List<Row> rows = new ArrayList<>();
        Money money = none;
        Money labour = none;
        int minutes = 0;
        boolean complete = true;
        boolean valued = true;
        for (Failure failure : page.failures()) {
            Failure.Kept kept = failure.prevention();
            rows.add(prevention(failure, kept));
            money = money.plus(kept.money());
            minutes += kept.minutes();
            complete &= kept.complete();
            valued &= kept.labour() != null;
            labour = kept.labour() == null ? labour : labour.plus(kept.labour());
        }
        if (!rows.isEmpty()) {
            rows.add(total(
                    ink.say("together"),
                    "",
                    ink.amount(page.total()),
                    leastly(ink.amount(money), complete),
                    leastly(hours(minutes), complete),
                    valued ? leastly(ink.amount(labour), complete) : ink.say("prevention.noRate")));
        }
        return new Section(
                ink.say("prevention"),
                List.of(
                        Column.name(ink.texts().get("season.column.failure"), 4),
                        Column.words(ink.texts().get("season.column.prevention"), 5),
                        Column.figure(ink.say("prevention.cost")),
                        Column.figure(ink.say("prevention.price")),
                        Column.figure(ink.say("prevention.hours")),
                        Column.figure(ink.say("prevention.labour"))),
                rows,
                rows.isEmpty() ? List.of() : List.of(ink.say("prevention.note")));
    }

    private Row prevention(Failure failure, Failure.Kept kept) {
        List<String> said = kept.count() == 0
                ? List.of(ink.texts().get("season.prevention.none"))
                : ink
                        .facts()
                        .of(Prevention.class)
                        .where(each -> each.incident().equals(failure.incident().id()))
                        .stream()
                        .map(this::said)
                        .toList();
        boolean nothing = kept.count() == 0;
        return new Row(
                Weight.LINE,
                List.of(
                        Cell.of(ink.season().name(failure.incident().fact())),
                        new Cell(said, 0),
                        Cell.of(ink.money().together(failure.cost(), page.switches())),
                        Cell.of(nothing ? "" : leastly(ink.amount(kept.money()), kept.complete())),
                        Cell.of(nothing ? "" : leastly(hours(kept.minutes()), kept.complete())),
                        Cell.of(nothing ? "" : valued(kept))));
    }

    private String valued(Failure.Kept kept) {
        @Nullable Money labour = kept.labour();
        return labour == null ? ink.say("prevention.noRate") : leastly(ink.amount(labour), kept.complete());
    }

    /** {@code spring set renewed at 12 h: 272.00 and 6.00 h}. */
    private String said(Entry<Prevention> prevention) {
        Money price = prevention.fact().money();
        Integer takes = prevention.fact().minutes();
        List<String> said = new ArrayList<>();
        if (price == null) {
            said.add(ink.say("prevention.noPrice"));
        } else if (price.currency().equals(none.currency())) {
            said.add(ink.amount(price));
        } else {
            said.add(ink.say("prevention.other", ink.measures().money(price)));
        }
        said.add(takes == null ? ink.say("prevention.noTime") : hours(takes));
        return ink.say(
                "prevention.each", prevention.fact().what(), ink.measures().all(said));
    }

    private String hours(int minutes) {
        return ink.measures().hours(new RunningTime(minutes * MINUTE));
    }

    private String leastly(String shown, boolean complete) {
        return complete ? shown : ink.measures().atLeast(shown);
    }
}
