package witnessmark.launch.seasonsheet;

import static witnessmark.launch.seasonsheet.SeasonInk.line;
import static witnessmark.launch.seasonsheet.SeasonInk.total;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.domain.Season;
import witnessmark.logbook.money.BudgetRow;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.quantity.Money;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;

/** Words planned beside spent, and seasons beside each other. */
final class BesideSections {
    private final SeasonInk ink;
    private final SeasonPage page;

    BesideSections(SeasonInk ink, SeasonPage page) {
        this.ink = ink;
        this.page = page;
    }

    Section budget() {
        List<Row> rows = new ArrayList<>();
        Money planned = Money.none(page.total().currency());
        Money spent = planned;
        for (BudgetRow row : page.budget()) {
            planned = planned.plus(row.planned());
            spent = spent.plus(row.spent());
            rows.add(line(
                    row.event() == null
                            ? ink.texts().get("season.noEvent")
                            : row.event().fact().name(),
                    row.car() == null
                            ? ink.texts().get("season.allCars")
                            : row.car().fact().name(),
                    ink.amount(row.planned()),
                    ink.amount(row.spent()),
                    ink.amount(row.planned().minus(row.spent()))));
        }
        if (!rows.isEmpty()) {
            rows.add(total(
                    ink.say("together"), "", ink.amount(planned), ink.amount(spent), ink.amount(planned.minus(spent))));
        }
        return new Section(
                ink.say("budget"),
                List.of(
                        Column.name(title("event"), 6),
                        Column.words(title("car"), 1),
                        Column.figure(title("planned")),
                        Column.figure(title("spent")),
                        Column.figure(title("left"))),
                rows,
                rows.isEmpty() ? List.of() : List.of(ink.say("budget.note")));
    }

    Section seasons() {
        List<Row> rows = new ArrayList<>();
        for (SeasonPage.Beside beside : page.beside()) {
            if (beside.reported() != null) {
                rows.add(reported(beside.season().name(), beside.reported().fact()));
            }
            rows.add(now(beside.season().name(), beside.now()));
        }
        return new Section(
                ink.say("beside"),
                List.of(
                        Column.mark(title("season")),
                        Column.words(title("which"), 6),
                        Column.figure(title("planned")),
                        Column.figure(title("spent")),
                        Column.figure(title("income")),
                        Column.figure(ink.money().column(Place.CASH)),
                        Column.figure(ink.money().column(Place.LABOUR)),
                        Column.figure(ink.money().column(Place.MISSED)),
                        Column.figure(title("hours"))),
                rows,
                List.of());
    }

    private Row reported(String name, Season season) {
        return line(
                name,
                season.closed() == null
                        ? ink.texts().get("season.beside.reported")
                        : ink.texts()
                                .get(
                                        "season.beside.reportedOn",
                                        ink.measures().date(season.closed().day())),
                amount(season.reportedBudget()),
                amount(season.reportedSpent()),
                amount(season.reportedIncome()),
                amount(season.reportedCash()),
                amount(season.reportedLabour()),
                amount(season.reportedMissed()),
                season.reportedRunning() == null
                        ? ink.texts().get("season.notWritten")
                        : ink.measures().hours(season.reportedRunning()));
    }

    private Row now(String name, SeasonCost now) {
        return line(
                name,
                ink.texts().get("season.beside.now"),
                ink.amount(now.budget()),
                ink.amount(now.spent()),
                ink.amount(now.income()),
                ink.amount(now.cash()),
                ink.amount(now.labour()),
                ink.amount(now.missed()),
                ink.measures().hours(now.running()));
    }

    private String amount(@Nullable Money money) {
        return money == null ? ink.texts().get("season.notWritten") : ink.amount(money);
    }

    private String title(String key) {
        return ink.texts().get("season.column." + key);
    }
}
