package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Car;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.CostLine;
import witnessmark.domain.CostShare;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.Entry;
import witnessmark.domain.HourRate;
import witnessmark.domain.IncomeLine;
import witnessmark.domain.Season;
import witnessmark.domain.Verdict;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Money;

/** Costs, budget, income, decisions and seasons by their sheets: bad entries are refused beside their field. */
class WhatSheetsOfMoneyRefuseTest {
    @TempDir
    Path folder;

    private OwnLogbook own;

    @BeforeEach
    void begin() {
        own = new OwnLogbook(folder);
        own.save(new AddCar(), "name", "41").orThrow();
        own.save(new AddCar(), "name", "57").orThrow();
        event("Round 1, Marl", LocalDate.of(2026, 2, 28));
        event("Round 2, Tarn", LocalDate.of(2026, 3, 7));
    }

    private void event(String name, LocalDate first) {
        own.write(new witnessmark.domain.Event(
                name, "Marl", first, first.plusDays(1), java.time.ZoneId.of("Europe/London"), null, ""));
    }

    @AfterEach
    void end() {
        own.close();
    }

    private static String[] cost(String... more) {
        String[] usual = {"cost_what", "skim", "cost_amount", "240"};
        String[] all = java.util.Arrays.copyOf(usual, usual.length + more.length);
        System.arraycopy(more, 0, all, usual.length, more.length);
        return all;
    }

    private Map<SheetField, Problem> queries(LogSheet sheet, String... typed) {
        SheetReading reading = own.sheets.read(sheet, own.filled(sheet, typed));
        Map<SheetField, Problem> queries = new HashMap<>();
        sheet.fields().forEach(field -> {
            Problem problem = reading.of(field).problem();
            if (problem != null) {
                queries.put(field, problem);
            }
        });
        return queries;
    }

    @Test
    void a_cost_says_what_for_and_how_much_and_lies_back_unless_it_is_still_to_be_paid() {
        own.refuses(new WriteCost(), ProblemKind.NEEDED, "cost_what", "cost_amount", "240");
        own.refuses(new WriteCost(), ProblemKind.NEEDED, "cost_amount", "cost_what", "skim");
        own.refuses(new WriteCost(), ProblemKind.CANNOT_READ, "cost_amount", cost("cost_amount", "lots"));
        own.refuses(new WriteCost(), ProblemKind.RUN_IN_FUTURE, "day", cost("day", "11 Mar 2026"));
        own.save(new WriteCost(), cost("day", "11 Mar 2026", "cost_basis", CostBasis.COMMITTED.code()))
                .orThrow();
        assertThat(own.only(CostLine.class).basis()).isEqualTo(CostBasis.COMMITTED);
        assertThat(own.only(CostLine.class).day()).isEqualTo(LocalDate.of(2026, 3, 11));
    }

    @Test
    void no_more_is_got_back_and_carried_on_than_was_paid() {
        own.refuses(new WriteCost(), ProblemKind.MORE_BACK_THAN_PAID, "cost_back", cost("cost_back", "240.01"));
        own.refuses(
                new WriteCost(),
                ProblemKind.MORE_BACK_THAN_PAID,
                "cost_back",
                cost("cost_back", "200", "cost_carried", "41"));
        own.refuses(new WriteCost(), ProblemKind.MORE_BACK_THAN_PAID, "cost_carried", cost("cost_carried", "300"));
        own.refuses(new WriteCost(), ProblemKind.OTHER_CURRENCY, "cost_back", cost("cost_back", "-1"));
        own.refuses(new WriteCost(), ProblemKind.OTHER_CURRENCY, "cost_tax", cost("cost_tax", "48 EUR"));
        own.refuses(
                new WriteCost(),
                ProblemKind.EARLIER_THAN,
                "cost_used",
                cost("cost_carried", "40", "day", "5 Mar", "cost_used", "4 Mar"));
        own.save(new WriteCost(), cost("cost_back", "200", "cost_carried", "40", "cost_until", "1 Jul 2026"))
                .orThrow();
        CostLine line = own.only(CostLine.class);
        assertThat(List.of(line.recovered().text(), line.carried().text())).containsExactly("200.00 GBP", "40.00 GBP");
        assertThat(line.carriedUntil()).isEqualTo(LocalDate.of(2026, 7, 1));
    }

    @Test
    void another_currency_needs_the_rate_of_its_day() {
        own.refuses(new WriteCost(), ProblemKind.NEEDED, "cost_rate", cost("cost_amount", "100 EUR"));
        own.refuses(
                new WriteCost(),
                ProblemKind.CANNOT_READ,
                "cost_rate",
                cost("cost_amount", "100 EUR", "cost_rate", "0"));
        own.save(new WriteCost(), cost("cost_amount", "100 EUR", "cost_rate", "0,85", "cost_tax", "20"))
                .orThrow();
        CostLine line = own.only(CostLine.class);
        assertThat(line.paid().text()).isEqualTo("100.00 EUR");
        assertThat(line.rate()).isEqualTo(new BigDecimal("0.85"));
        assertThat(String.valueOf(line.tax())).contains("EUR");
    }

    @Test
    void a_credit_note_is_let_through_and_said() {
        SheetReading reading =
                own.sheets.read(new WriteCost(), own.filled(new WriteCost(), cost("cost_amount", "-16.50")));
        assertThat(reading.stops()).isFalse();
        assertThat(reading.of(WriteCost.AMOUNT).note().key()).isEqualTo("credit_note");
        own.save(new WriteCost(), cost("cost_amount", "-16.50")).orThrow();
        assertThat(own.only(CostLine.class).paid().minor()).isEqualTo(-1650);
    }

    @ParameterizedTest(name = "shared: {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "41 1, 57 1|1|1",
                "57 3, car 41 1|1|3",
                "60/40|60|40",
                "41 60 %, 57 40 %|60|40",
                "41, 57|1|1",
                "''|1|1"
            })
    void a_shared_cost_is_shared_in_parts_or_percent_or_alike(String typed, int of41, int of57) {
        own.save(new WriteCost(), cost("car", "shared", "cost_shares", typed)).orThrow();
        Map<String, Integer> parts = new HashMap<>();
        own.desk
                .view()
                .facts()
                .of(CostShare.class)
                .inForce()
                .forEach(share -> parts.put(
                        own.desk
                                .view()
                                .facts()
                                .of(Car.class)
                                .get(share.fact().car())
                                .name(),
                        share.fact().parts()));
        assertThat(parts).containsExactlyInAnyOrderEntriesOf(Map.of("41", of41, "57", of57));
        assertThat(own.only(CostLine.class).car()).isNull();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "60/30|SHARES_NOT_WHOLE",
                "41 60 %, 57 50 %|SHARES_NOT_WHOLE",
                "41 1, 9 1|NOT_FOUND",
                "50/25/25|CANNOT_READ",
                "41 1, 41 1|CANNOT_READ",
                "41 60 %, 57 1|CANNOT_READ",
                "41 0, 57 0|SHARES_NOT_WHOLE"
            })
    void shares_that_are_not_the_whole_or_of_no_car_are_refused(String typed, ProblemKind kind) {
        own.refuses(new WriteCost(), kind, "cost_shares", cost("car", "shared", "cost_shares", typed));
    }

    /** Six hours and a half at 42: 273, by hand. */
    @Test
    void own_labour_is_valued_at_the_rate_of_its_day_and_refused_without_one() {
        String[] work = {
            "cost_what", "shells", "cost_basis", CostBasis.VALUED.code(), "cost_hours", "6.5", "day", "9 Mar"
        };
        own.refuses(new WriteCost(), ProblemKind.NO_HOUR_RATE, "cost_hours", work);
        own.save(new SetHourRate(), "rate_amount", "40", "rate_from", "1 Jan 2026")
                .orThrow();
        own.save(new SetHourRate(), "rate_amount", "42", "rate_from", "9 Mar 2026")
                .orThrow();
        own.save(new WriteCost(), work).orThrow();
        assertThat(own.only(CostLine.class).paid().text()).isEqualTo("273.00 GBP");
        assertThat(own.only(CostLine.class).minutes()).isEqualTo(390);
        own.refuses(
                new WriteCost(),
                ProblemKind.NO_HOUR_RATE,
                "cost_hours",
                "cost_what",
                "shells",
                "cost_basis",
                CostBasis.VALUED.code(),
                "cost_hours",
                "2",
                "day",
                "31 Dec 2025");
    }

    /** So that it can be said of a failure that nobody's time went on it. */
    @Test
    void no_hours_of_own_work_can_be_written_down() {
        own.save(new SetHourRate(), "rate_amount", "42", "rate_from", "1 Jan 2026")
                .orThrow();
        own.save(
                        new WriteCost(),
                        "cost_what",
                        "no own work",
                        "cost_basis",
                        CostBasis.VALUED.code(),
                        "cost_hours",
                        "0",
                        "day",
                        "9 Mar")
                .orThrow();
        assertThat(own.only(CostLine.class).paid().text()).isEqualTo("0.00 GBP");
        assertThat(own.only(CostLine.class).minutes()).isZero();
    }

    @Test
    void a_day_of_another_season_asks_and_may_be_saved() {
        Problem asked = queries(new WriteCost(), cost("day", "30 Dec 2025")).get(WriteCost.DAY);
        assertThat(asked.kind()).isEqualTo(ProblemKind.DAY_OF_ANOTHER_SEASON);
        assertThat(asked.stops()).isFalse();
        assertThat(asked.facts()).containsExactly(LocalDate.of(2025, 12, 30), "2025");
        own.save(new WriteCost(), cost("day", "30 Dec 2025")).orThrow();
        assertThat(queries(new WriteCost(), cost("day", "1 Mar 2026"))).isEmpty();
    }

    @Test
    void a_written_cost_opens_on_its_own_sheet_with_what_was_typed_and_is_corrected_there() {
        own.save(
                        new WriteCost(),
                        cost(
                                "event",
                                "Round 1, Marl",
                                "car",
                                "41",
                                "cost_back",
                                "40",
                                "cost_supplier",
                                "Tarn",
                                "cost_kind",
                                "machining"))
                .orThrow();
        Entry<CostLine> entry = own.desk.view().facts().of(CostLine.class).all().get(0);
        WrittenSheet<CostLine> written = own.sheets.open(entry, List.of(new WriteCost()), LocalDate::toString);
        assertThat(written.sheet()).isInstanceOf(CorrectSheet.class);
        Map<SheetField, String> typed = new HashMap<>(written.texts());
        assertThat(written.read(typed).entries()).isEmpty();
        typed.put(WriteCost.AMOUNT, "250");
        typed.put(CorrectSheet.BECAUSE, "misread");
        written.save(typed, "misread").orThrow();
        CostLine now = own.only(CostLine.class);
        assertThat(now.paid().text()).isEqualTo("250.00 GBP");
        assertThat(now.recovered().text()).isEqualTo("40.00 GBP");
        assertThat(now.supplier()).isEqualTo("Tarn");
        typed.put(WriteCost.CAR, SheetWord.SHARED.key());
        Entry<CostLine> again = own.desk.view().facts().of(CostLine.class).all().get(0);
        assertThat(own.sheets
                        .open(again, List.of(new WriteCost()), LocalDate::toString)
                        .read(typed)
                        .of(WriteCost.CAR)
                        .problem())
                .extracting(Problem::kind)
                .isEqualTo(ProblemKind.SHARED_ANEW);
    }

    @Test
    void a_weekend_is_filled_with_what_the_last_one_of_that_car_took_and_what_is_empty_is_not_written() {
        own.save(
                        new WeekendCosts(),
                        "event",
                        "Round 1, Marl",
                        "car",
                        "41",
                        "day",
                        "28 Feb 2026",
                        "weekend_entry",
                        "520",
                        "weekend_tyres",
                        "740",
                        "weekend_fuel",
                        "")
                .orThrow();
        assertThat(own.desk.view().facts().of(CostLine.class).inForce().toList())
                .hasSize(2);
        WeekendCosts sheet = new WeekendCosts();
        Map<SheetField, String> fresh = sheet.fresh(own.sheets.sight());
        assertThat(fresh.get(WeekendCosts.amount(CostCategory.ENTRY))).isEqualTo("520.00");
        assertThat(fresh.get(WeekendCosts.amount(CostCategory.FUEL))).isEmpty();
        Map<SheetField, String> of57 = new HashMap<>(fresh);
        of57.put(WeekendCosts.CAR, own.the(Car.class, "57").id().text());
        assertThat(sheet.follows(WeekendCosts.CAR, new SheetTyped(of57), own.sheets.sight())
                        .get(WeekendCosts.amount(CostCategory.ENTRY)))
                .isEmpty();
        own.sheets.save(sheet, fresh, "by hand").orThrow();
        assertThat(own.desk.view().facts().of(CostLine.class).inForce().toList())
                .hasSize(4);
        assertThat(queries(sheet, "event", "Round 2, Tarn", "car", "41", "weekend_entry", "520"))
                .extractingByKey(WeekendCosts.amount(CostCategory.ENTRY))
                .extracting(Problem::kind, Problem::stops)
                .containsExactly(ProblemKind.WRITTEN_FOR_IT_ALREADY, false);
        own.refuses(
                sheet,
                ProblemKind.NEEDED,
                "weekend_entry",
                "event",
                "Round 2, Tarn",
                "car",
                "57",
                "weekend_entry",
                "",
                "weekend_tyres",
                "");
        own.refuses(
                sheet,
                ProblemKind.OTHER_CURRENCY,
                "weekend_entry",
                "event",
                "Round 2, Tarn",
                "car",
                "57",
                "weekend_entry",
                "520 EUR");
    }

    @Test
    void a_question_is_put_decided_and_later_held_against_what_came_of_it() {
        own.refuses(new PutDecision(), ProblemKind.NEEDED, "question");
        own.refuses(new PutDecision(), ProblemKind.NEEDED, "way_2", "question", "run?", "way_1", "run", "way_2", "Run");
        own.save(
                        new PutDecision(),
                        "question",
                        "springs over: run?",
                        "way_1",
                        "renew",
                        "way_money_1",
                        "272",
                        "way_hours_1",
                        "6",
                        "way_days_1",
                        "8",
                        "way_2",
                        "run",
                        "way_past_2",
                        "springs 12 h",
                        "when",
                        "8 Mar")
                .orThrow();
        assertThat(own.only(Decision.class).mark()).isEqualTo("DEC-01");
        own.refuses(
                new PutDecision(),
                ProblemKind.NAME_TAKEN,
                "decision_mark",
                "question",
                "again?",
                "decision_mark",
                "dec-01");
        own.refuses(new DecideIt(), ProblemKind.NEEDED, "decision_option");
        own.refuses(
                new DecideIt(),
                ProblemKind.NEEDED,
                "adviser",
                "decision_option",
                "run",
                "decision_asked",
                "somebody_asked");
        own.refuses(new DecideIt(), ProblemKind.NEEDED, "decided_by", "decision_option", "run", "decided_by", " ");
        own.refuses(new DecideIt(), ProblemKind.EARLIER_THAN, "when", "decision_option", "run", "when", "7 Mar");
        own.save(new DecideIt(), "decision_option", "run", "decided_by", "Owner", "dissent", "Ada: renew them")
                .orThrow();
        Decision decided = own.only(Decision.class);
        assertThat(List.of(decided.decidedBy(), decided.adviser(), decided.dissent()))
                .containsExactly("Owner", "", "Ada: renew them");
        assertThat(own.desk.view().facts().of(DecisionOption.class).where(DecisionOption::taken))
                .singleElement()
                .extracting(option -> option.fact().name())
                .isEqualTo("run");
        own.refuses(new CameOfIt(), ProblemKind.NEEDED, "outcome");
        own.save(new CameOfIt(), "outcome", "a spring broke", "verdict", "wrong")
                .orThrow();
        assertThat(own.only(Decision.class).verdict()).isEqualTo(Verdict.WRONG);
    }

    @Test
    void rates_and_income_are_in_money_that_can_be_counted() {
        own.refuses(new SetHourRate(), ProblemKind.LESS_THAN_NOTHING, "rate_amount", "rate_amount", "-1");
        own.refuses(new SetHourRate(), ProblemKind.OTHER_CURRENCY, "rate_amount", "rate_amount", "40 EUR");
        own.refuses(new WriteIncome(), ProblemKind.NEEDED, "income_what", "cost_amount", "9000");
        own.refuses(
                new WriteIncome(), ProblemKind.NEEDED, "cost_rate", "income_what", "prize", "cost_amount", "90 EUR");
        own.refuses(new WriteBudget(), ProblemKind.NEEDED, "cost_amount");
        own.save(new WriteIncome(), "income_what", "prize", "cost_amount", "1.250,50", "income_from", "series")
                .orThrow();
        assertThat(own.only(IncomeLine.class).amount()).isEqualTo(Money.parse("1250.50 GBP"));
        assertThat(own.desk.view().facts().of(HourRate.class).all()).isEmpty();
    }

    @Test
    void a_season_is_closed_with_its_figures_as_reported_once_and_asks_while_it_goes_on() {
        own.save(new WriteCost(), cost("day", "30 Dec 2025")).orThrow();
        own.save(new WriteCost(), cost()).orThrow();
        own.refuses(
                new CloseSeason(),
                ProblemKind.ENDS_BEFORE_IT_BEGINS,
                "season_last",
                "season",
                "2025",
                "season_first",
                "1 Jan 2026",
                "season_last",
                "31 Dec 2025");
        assertThat(queries(
                        new CloseSeason(),
                        "season",
                        "2026",
                        "season_first",
                        "1 Jan 2026",
                        "season_last",
                        "31 Dec 2026"))
                .extractingByKey(CloseSeason.LAST)
                .extracting(Problem::kind, Problem::stops)
                .containsExactly(ProblemKind.SEASON_NOT_OVER, false);
        own.save(new CloseSeason(), "season", "2025").orThrow();
        Season closed = own.only(Season.class);
        assertThat(closed.reportedSpent()).isEqualTo(Money.parse("240.00 GBP"));
        assertThat(closed.by()).isEqualTo("Ada");
        assertThat(new CloseSeason().choices(CloseSeason.SEASON, new SheetTyped(Map.of()), own.sheets.sight()))
                .extracting(Choice::key)
                .containsExactly("2026");
    }
}
