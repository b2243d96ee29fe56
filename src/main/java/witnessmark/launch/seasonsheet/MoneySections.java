package witnessmark.launch.seasonsheet;

import static witnessmark.launch.seasonsheet.SeasonInk.line;
import static witnessmark.launch.seasonsheet.SeasonInk.sum;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.HourRate;
import witnessmark.domain.IncomeLine;
import witnessmark.domain.RateKind;
import witnessmark.logbook.money.SeasonSheetFacts;
import witnessmark.quantity.Money;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;

/** Words where all money went and that it adds up, what an hour counts at, and what is in no total. */
final class MoneySections {
    private final SeasonInk ink;
    private final SeasonSheetFacts sheet;
    private final SeasonCost cost;
    private final SeasonSpan season;

    MoneySections(SeasonInk ink, SeasonSheetFacts sheet) {
        this.ink = ink;
        this.sheet = sheet;
        this.cost = sheet.page().cost();
        this.season = cost.season();
    }

    /** Spent less kept with what was brought in is what failures and running took. */
    Section season() {
        Money used = cost.spent().minus(cost.kept()).plus(cost.broughtIn());
        Money together = cost.cash().plus(cost.missed()).plus(cost.spoiled()).plus(cost.runningCosts());
        List<Row> rows = new ArrayList<>();
        rows.add(line(ink.texts().get("season.money.planned"), ink.amount(cost.budget()), letter(plans(), "F")));
        rows.add(line(
                ink.texts().get("season.money.income"),
                ink.amount(cost.income()),
                letter(!sheet.page().income().isEmpty(), "G")));
        rows.add(line(
                ink.texts().get("season.money.spent"),
                ink.amount(cost.spent()),
                ink.say(sheet.pieces().broughtIn().isEmpty() ? "behind.spent" : "behind.spent.brought")));
        rows.add(line(
                ink.say("kept"),
                ink.amount(cost.kept().negated()),
                letter(!sheet.pieces().kept().isEmpty(), "D")));
        rows.add(line(
                ink.say("brought"),
                ink.amount(cost.broughtIn()),
                letter(!sheet.pieces().broughtIn().isEmpty(), "E")));
        rows.add(sum(ink.say("used"), ink.amount(used), ""));
        rows.add(line(ink.say("used.failures"), ink.amount(cost.cash()), letter(Place.CASH, "A")));
        rows.add(line(ink.say("used.missed"), ink.amount(cost.missed()), letter(Place.MISSED, "A")));
        rows.add(line(ink.say("used.spoiled"), ink.amount(cost.spoiled()), letter(Place.SPOILED, "A")));
        rows.add(line(ink.say("used.running"), ink.amount(cost.runningCosts()), letter(Place.RUNNING, "B")));
        rows.add(sum(ink.say("used.together"), ink.amount(together), ""));
        rows.add(line(ink.texts().get("season.money.committed"), ink.amount(cost.committed()), ""));
        rows.add(line(ink.say("labour"), ink.amount(cost.labour()), letter(Place.LABOUR, "A")));
        rows.add(line(ink.say("ownWork"), ink.amount(cost.ownWork()), letter(Place.OWN_WORK, "C")));
        return new Section(
                ink.say("money"),
                List.of(
                        Column.words("", 4),
                        Column.figure(cost.spent().currency().getCurrencyCode()),
                        Column.words(ink.say("behind"), 4)),
                rows,
                missing());
    }

    private String letter(Place place, String letter) {
        return letter(sheet.pieces().counted().stream().anyMatch(piece -> piece.place() == place), letter);
    }

    /** The letter of lines that are there. */
    private static String letter(boolean there, String letter) {
        return there ? letter : "";
    }

    private boolean plans() {
        return !ink.facts()
                .of(BudgetLine.class)
                .where(each -> season.has(each.day()))
                .isEmpty();
    }

    private List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (sheet.pieces().counted().isEmpty() && sheet.pieces().kept().isEmpty()) {
            missing.add(ink.say("notSpent"));
        }
        if (sheet.page().failures().isEmpty()) {
            missing.add(ink.say("notFailed"));
        }
        if (!plans()) {
            missing.add(ink.say("notPlanned"));
        }
        if (sheet.page().income().isEmpty()) {
            missing.add(ink.say("notIncome"));
        }
        return missing;
    }

    /** What stood at the beginning of the season, and what came after. */
    Section rates() {
        LocalDate last = season.last().isAfter(sheet.day()) ? sheet.day() : season.last();
        List<HourRate> rates = ink.facts()
                .of(HourRate.class)
                .inForce()
                .map(Entry::fact)
                .filter(rate -> !rate.from().isAfter(last))
                .sorted(Comparator.comparing(HourRate::kind).thenComparing(HourRate::from))
                .toList();
        List<Row> rows = rates.stream()
                .filter(rate -> rates.stream().noneMatch(other -> ends(rate, other)))
                .map(rate -> line(
                        ink.say("rates.hour", ink.records().word(rate.kind())),
                        ink.measures().date(rate.from()),
                        ink.measures().money(rate.amount())))
                .toList();
        List<String> notes = new ArrayList<>(List.of(ink.say("rates.note")));
        if (sheet.pieces().counted().stream().anyMatch(this::isForeign)) {
            notes.add(ink.say("rates.day"));
        }
        if (rates.stream().noneMatch(rate -> rate.kind() == RateKind.OWN_LABOUR)) {
            notes.add(ink.say("rates.noLabour"));
        }
        if (rates.stream().noneMatch(rate -> rate.kind() == RateKind.ENGINE_RUNNING)) {
            notes.add(ink.say("rates.noRunning"));
        }
        return new Section(
                ink.say("rates"),
                List.of(
                        Column.name(ink.say("rates.what"), 2),
                        Column.words(ink.say("rates.from"), 2),
                        Column.figure(ink.say("rates.amount"))),
                rows,
                notes);
    }

    private boolean isForeign(Piece piece) {
        return ink.facts().of(CostLine.class).get(piece.line()).rate() != null;
    }

    /** Whether another rate had taken its place before the season began. */
    private boolean ends(HourRate rate, HourRate other) {
        return other.kind() == rate.kind()
                && other.from().isAfter(rate.from())
                && !other.from().isAfter(season.first());
    }

    /** Costs, budget and income in another currency, without a rate. */
    Section noRate() {
        List<Row> rows = new ArrayList<>();
        sheet.page().noRate().forEach(missing -> {
            CostLine line = ink.facts().of(CostLine.class).get(missing.line());
            if (season.has(line.day())) {
                rows.add(line(ink.day(line.day()), line.what(), ink.measures().money(missing.amount())));
            }
        });
        for (Entry<BudgetLine> budget : ink.facts().of(BudgetLine.class).where(each -> season.has(each.day()))) {
            BudgetLine fact = budget.fact();
            if (ink.home(fact.amount(), fact.rate()).isEmpty()) {
                String what = ink.say("noRate.budget", ink.records().word(fact.category()));
                rows.add(line(ink.day(fact.day()), what, ink.measures().money(fact.amount())));
            }
        }
        for (Entry<IncomeLine> income : sheet.page().income()) {
            IncomeLine fact = income.fact();
            if (ink.home(fact.amount(), fact.rate()).isEmpty()) {
                String what = ink.say("noRate.income", fact.what());
                rows.add(line(ink.day(fact.day()), what, ink.measures().money(fact.amount())));
            }
        }
        return new Section(
                ink.say("noRate"),
                List.of(
                        Column.mark(ink.texts().get("season.column.day")),
                        Column.name(ink.texts().get("season.column.what"), 8),
                        Column.figure(ink.texts().get("season.column.amount"))),
                rows,
                rows.isEmpty() ? List.of() : List.of(ink.say("noRate.note")));
    }
}
