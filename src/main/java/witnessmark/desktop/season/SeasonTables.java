package witnessmark.desktop.season;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.Texts;

/** The tables of the page. Amounts stand under each other, and what can be added up is added up below. */
final class SeasonTables {
    /** Where in the table of failures the columns of money begin. */
    static final int FIRST_COLUMN = 2;

    private static final int MONEY = 104;
    private static final int LINE = 72;

    private final SheetTools tools;
    private final Texts texts;
    private final MoneyWords money;
    private final Supplier<SeasonLines.Totals> totals;

    SeasonTables(SheetTools tools, MoneyWords money, Supplier<SeasonLines.Totals> totals) {
        this.tools = tools;
        this.texts = tools.texts();
        this.money = money;
        this.totals = totals;
    }

    SheetTable<FailureLine> failures() {
        List<Column<FailureLine>> columns = new java.util.ArrayList<>();
        columns.add(Column.<FailureLine, LocalDate>text(title("day"), FailureLine::day, FailureLine::at)
                .wide(66));
        columns.add(Column.<FailureLine>text(title("failure"), FailureLine::name)
                .strong()
                .wide(300)
                .grow()
                .totalled(rows -> texts.get("season.failures.shown", rows.size())));
        for (int i = 0; i < SeasonModel.COLUMNS.size(); i++) {
            int at = i;
            columns.add(amount(
                    money.column(SeasonModel.COLUMNS.get(i)),
                    (FailureLine row) -> row.columns().get(at)));
        }
        columns.add(amount(texts.get("money.column.total"), FailureLine::total));
        columns.add(Column.<FailureLine>text(title("prevention"), FailureLine::prevention)
                .wide(230)
                .grow());
        columns.add(
                Column.<FailureLine>text(title("cameOf"), FailureLine::cameOf).wide(90));
        return table("failures", columns, FailureLine::id);
    }

    SheetTable<BarLine> bars() {
        return table(
                "bars",
                List.of(
                        Column.<BarLine>text(title("bar"), BarLine::name)
                                .strong()
                                .wide(220)
                                .grow(),
                        Column.<BarLine, Long>bar(
                                        title("drawn"),
                                        BarLine::bar,
                                        BarLine::said,
                                        row -> row.amount().minor())
                                .wide(300)
                                .grow(),
                        amount(title("amount"), BarLine::amount),
                        Column.<BarLine, Long>figure(
                                        title("share"),
                                        BarLine::share,
                                        row -> row.amount().minor())
                                .wide(74),
                        Column.<BarLine, Long>figure(
                                        title("running"),
                                        BarLine::running,
                                        row -> -row.amount().minor())
                                .wide(110),
                        Column.<BarLine>text(title("perHour"), BarLine::perHour).wide(150)),
                BarLine::id);
    }

    SheetTable<KindLine> kinds() {
        return table(
                "kinds",
                List.of(
                        Column.<KindLine>text(money.kinds(), KindLine::name)
                                .strong()
                                .wide(240)
                                .grow(),
                        amount(money.kindDue(), KindLine::due),
                        amount(money.kindBought(), KindLine::bought),
                        amount(money.kindRest(), KindLine::rest),
                        amount(texts.get("money.column.total"), KindLine::together)),
                KindLine::name);
    }

    SheetTable<BudgetLine> budget() {
        return table(
                "budget",
                List.of(
                        Column.<BudgetLine, String>text(title("event"), BudgetLine::event, BudgetLine::day)
                                .strong()
                                .wide(240)
                                .grow(),
                        Column.<BudgetLine>text(title("car"), BudgetLine::car).wide(90),
                        amount(title("planned"), BudgetLine::planned),
                        amount(title("spent"), BudgetLine::spent),
                        amount(title("left"), BudgetLine::left)
                                .inked(row -> row.over() ? SeamState.OVER : SeamState.WITHIN)),
                row -> row.event() + row.car());
    }

    SheetTable<DecisionLine> decisions() {
        return table(
                "decisions",
                List.of(
                        Column.<DecisionLine, LocalDate>text(title("day"), DecisionLine::day, DecisionLine::at)
                                .wide(66),
                        Column.<DecisionLine>text(title("question"), DecisionLine::question)
                                .strong()
                                .wide(230)
                                .grow(),
                        Column.<DecisionLine>text(title("taken"), DecisionLine::taken)
                                .wide(170)
                                .grow(),
                        Column.<DecisionLine>text(title("others"), DecisionLine::others)
                                .wide(200)
                                .grow(),
                        Column.<DecisionLine>text(title("cameOfIt"), DecisionLine::cameOf)
                                .wide(220)
                                .grow(),
                        Column.<DecisionLine>text(title("asked"), DecisionLine::asked)
                                .wide(120)
                                .onAsking()),
                DecisionLine::id);
    }

    SheetTable<SettleLine> settle() {
        return table(
                "settle",
                List.of(
                        Column.<SettleLine, LocalDate>text(title("by"), SettleLine::by, SettleLine::last)
                                .wide(120),
                        Column.<SettleLine>text(title("settle"), SettleLine::what)
                                .strong()
                                .wide(170)
                                .totalled(rows -> texts.get("season.settle.rows", rows.size())),
                        Column.<SettleLine>text(title("cost"), SettleLine::cost)
                                .wide(200)
                                .grow(),
                        Column.<SettleLine>text(title("where"), SettleLine::where)
                                .wide(220)
                                .grow(),
                        amount(title("amount"), SettleLine::amount)),
                row -> row.record() + row.what());
    }

    SheetTable<CostRow> income() {
        return table(
                "income",
                List.of(
                        Column.<CostRow, LocalDate>text(title("day"), CostRow::day, CostRow::at)
                                .wide(112),
                        Column.<CostRow>text(title("what"), CostRow::what)
                                .strong()
                                .wide(220)
                                .grow(),
                        Column.<CostRow>text(title("kind"), CostRow::kind).wide(130),
                        Column.<CostRow>text(title("from"), CostRow::whom)
                                .wide(180)
                                .grow(),
                        Column.<CostRow, Long>figure(
                                        title("amount"),
                                        row -> row.amount().text(),
                                        row -> row.amount().minor())
                                .wide(130)),
                CostRow::record);
    }

    SheetTable<BesideLine> beside() {
        List<Column<BesideLine>> columns = new java.util.ArrayList<>();
        columns.add(Column.<BesideLine>text(title("season"), BesideLine::season)
                .strong()
                .wide(80));
        columns.add(Column.<BesideLine>text(title("which"), BesideLine::which)
                .wide(220)
                .grow());
        String[] titles = {"planned", "spent", "income"};
        for (int i = 0; i < titles.length; i++) {
            int at = i;
            columns.add(plain(title(titles[i]), row -> row.amounts().get(at)));
        }
        for (int i = 0; i < 3; i++) {
            int at = titles.length + i;
            columns.add(plain(
                    money.column(SeasonModel.COLUMNS.get(i)),
                    row -> row.amounts().get(at)));
        }
        columns.add(plain(title("hours"), BesideLine::hours));
        return table("beside", columns, BesideLine::id);
    }

    /** The lines behind a figure. What was paid for a line is not added up: it stands beside each share of it. */
    SheetTable<CostRow> lines() {
        return new SheetTable<>(
                        texts.get("season.lines"),
                        List.of(
                                Column.<CostRow, LocalDate>text(title("day"), CostRow::day, CostRow::at)
                                        .wide(62),
                                Column.<CostRow>text(title("incident"), CostRow::incident)
                                        .wide(62),
                                Column.<CostRow>text(title("what"), CostRow::what)
                                        .strong()
                                        .wide(180)
                                        .grow(),
                                Column.<CostRow>text(title("event"), CostRow::event)
                                        .wide(150)
                                        .grow(),
                                Column.<CostRow>text(title("car"), CostRow::car).wide(42),
                                Column.<CostRow>text(title("kind"), CostRow::kind)
                                        .wide(112)
                                        .grow(),
                                Column.<CostRow>text(title("column"), CostRow::column)
                                        .wide(106)
                                        .grow(),
                                Column.<CostRow>text(title("whom"), CostRow::whom)
                                        .wide(118)
                                        .grow(),
                                some("paid", CostRow::paid),
                                some("back", CostRow::back),
                                some("kept", CostRow::kept),
                                amount(title("counts"), CostRow::amount).wide(LINE)),
                        row -> row.record() + row.column() + row.day() + row.incident())
                .with(tools, "season.lines");
    }

    /** Columns that say nothing of any line are not there, nor the failure where all are of one. */
    static void offerLines(SheetTable<CostRow> table, List<CostRow> rows) {
        List<Function<CostRow, String>> said = List.of(
                CostRow::event,
                CostRow::car,
                CostRow::kind,
                CostRow::whom,
                row -> row.paid().text(),
                row -> row.back().text(),
                row -> row.kept().text());
        List<Integer> at = List.of(3, 4, 5, 7, 8, 9, 10);
        table.offer(1, rows.stream().map(CostRow::incident).distinct().count() > 1);
        for (int i = 0; i < at.size(); i++) {
            Function<CostRow, String> words = said.get(i);
            table.offer(
                    at.get(i), rows.stream().anyMatch(row -> !words.apply(row).isEmpty()));
        }
    }

    private Column<CostRow> some(String key, Function<CostRow, Amount> of) {
        return Column.<CostRow, Long>figure(title(key), row -> of.apply(row).text(), row -> {
                    Amount amount = of.apply(row);
                    return amount.text().isEmpty() ? null : amount.minor();
                })
                .wide(LINE);
    }

    private <R> SheetTable<R> table(String name, List<Column<R>> columns, Function<? super R, ?> id) {
        return new SheetTable<>(texts.get("season." + name), columns, id)
                .with(tools, "season." + name)
                .whole();
    }

    private <R> Column<R> amount(String title, Function<R, Amount> of) {
        ToLongFunction<R> minor = row -> of.apply(row).minor();
        return plain(title, of)
                .totalled(rows -> totals.get().of(rows.stream().mapToLong(minor).sum()));
    }

    private static <R> Column<R> plain(String title, Function<R, Amount> of) {
        return Column.<R, Long>figure(
                        title, row -> of.apply(row).text(), row -> of.apply(row).minor())
                .wide(MONEY);
    }

    private String title(String key) {
        return texts.get("season.column." + key);
    }
}
