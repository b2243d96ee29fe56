package witnessmark.launch.seasonsheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.Costs;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.domain.Car;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.money.SeasonSheetFacts;
import witnessmark.quantity.Money;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Weight;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.SeasonWords;
import witnessmark.wording.Texts;

/** The words that all sections of one season's pages are made with. */
final class SeasonInk {
    private static final char UNBROKEN_SPACE = '\u00A0';

    private final Texts texts;
    private final Measures measures;
    private final Facts facts;
    private final SeasonSpan season;
    private final Currency home;

    SeasonInk(Texts texts, Measures measures, SeasonSheetFacts sheet) {
        this.texts = texts;
        this.measures = measures;
        this.facts = sheet.facts();
        this.season = sheet.page().cost().season();
        this.home = sheet.page().total().currency();
    }

    Texts texts() {
        return texts;
    }

    Measures measures() {
        return measures;
    }

    Facts facts() {
        return facts;
    }

    MoneyWords money() {
        return new MoneyWords(texts, measures);
    }

    SeasonWords season() {
        return new SeasonWords(texts, measures);
    }

    RecordWords records() {
        return new RecordWords(texts);
    }

    /** A sentence of these pages: its key without their name. */
    String say(String key, Object... blanks) {
        return texts.get("seasonsheet." + key, blanks);
    }

    String amount(Money money) {
        return measures.amount(money);
    }

    /** {@code 12 000 JPY at 0.0061}. */
    String rate(Money amount, BigDecimal rate) {
        return money().atRate(amount, rate);
    }

    /** The amount; nothing where it is none. */
    String some(Money money) {
        return money.isNone() ? "" : measures.amount(money);
    }

    /** The year goes without saying where it is the season's. */
    String day(LocalDate day) {
        return season().day(season, day);
    }

    /** In the home currency; empty where that takes a rate nobody wrote down. */
    Optional<Money> home(Money amount, @Nullable BigDecimal rate) {
        return Costs.home(amount, rate, home);
    }

    /** {@code INC-05 Big end no. 3 again}. */
    String name(Id<Incident> id) {
        return season().name(facts.of(Incident.class).get(id));
    }

    Optional<String> event(@Nullable Id<Event> id) {
        return Optional.ofNullable(id)
                .flatMap(facts.of(Event.class)::find)
                .map(entry -> entry.fact().name());
    }

    /** {@code car 41}. */
    Optional<String> car(@Nullable Id<Car> id) {
        return Optional.ofNullable(id)
                .flatMap(facts.of(Car.class)::find)
                .map(entry -> texts.get("season.forCar", entry.fact().name()).replace(' ', UNBROKEN_SPACE));
    }

    static Row line(String... cells) {
        return new Row(Weight.LINE, cells(cells));
    }

    static Row sum(String... cells) {
        return new Row(Weight.SUM, cells(cells));
    }

    static Row total(String... cells) {
        return new Row(Weight.TOTAL, cells(cells));
    }

    /** What lines come to: the words in one column, the amount in the last. */
    static Row sum(Weight weight, int columns, int at, String words, String amount) {
        List<String> cells = new ArrayList<>(Collections.nCopies(columns, ""));
        cells.set(at, words);
        cells.set(columns - 1, amount);
        return new Row(weight, cells(cells.toArray(String[]::new)));
    }

    private static List<Cell> cells(String... words) {
        return List.of(words).stream().map(Cell::of).toList();
    }
}
