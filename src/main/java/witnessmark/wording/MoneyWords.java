package witnessmark.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.KindCost;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Span;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Coded;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** What costs come to, in words. */
public final class MoneyWords {
    private static final BigDecimal HOUR = BigDecimal.valueOf(3_600_000);

    private final Texts texts;
    private final Measures measures;

    /** Words in a team's language. */
    public MoneyWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** The heading of a column: {@code Own labour}. */
    public String column(Place place) {
        return texts.get("money.column." + place.name().toLowerCase(Locale.ROOT));
    }

    /** What stands in a column of an incident: that nothing is written of it, or that all of that is left out, where so. */
    public String in(Place column, IncidentCost cost, Switches switches) {
        if (isUnwritten(column, cost)) {
            return texts.get("money.unwritten");
        }
        return cost.isLeftOut(column, switches)
                ? texts.get("money.left_out")
                : measures.amount(cost.column(column, switches));
    }

    /** Whether nothing is known of a column of an incident: nobody wrote of it, or of any of its cost. */
    public static boolean isUnwritten(Place column, IncidentCost cost) {
        return cost.isUnwritten() || cost.unwritten().contains(column);
    }

    /**
     * What an incident cost together: {@code not written} where nobody wrote anything of it, {@code left out} where all
     * that is written is left out of this total.
     */
    public String together(IncidentCost cost, Switches switches) {
        return cost.hasTotal(switches)
                ? measures.amount(cost.total(switches))
                : texts.get(cost.isUnwritten() ? "money.unwritten" : "money.left_out");
    }

    /** The same with its currency, to stand alone: {@code 8 020.00 EUR}, or {@code no cost written yet}. */
    public String whole(IncidentCost cost, Switches switches) {
        return cost.hasTotal(switches)
                ? measures.money(cost.total(switches))
                : texts.get(cost.isUnwritten() ? "money.unwritten.all" : "money.left_out.all");
    }

    /** An amount with where it is counted: {@code own labour 2 436.00}. */
    public String columnOf(Place place, Money amount) {
        return texts.get("money.column_of", column(place).toLowerCase(texts.locale()), measures.amount(amount));
    }

    /** By what failures are put together, inside a sentence: {@code part that failed}. */
    public String by(BarsBy by) {
        return texts.get("money.by." + by.name().toLowerCase(Locale.ROOT));
    }

    /** What a total takes in and leaves out: {@code own labour counted, spoiled weekends left out …}. */
    public String restsOn(Switches switches) {
        List<String> all = new ArrayList<>();
        all.add(rests("labour", switches.labour()));
        all.add(rests("missed", switches.missed()));
        all.add(rests("spoiled", switches.spoiled()));
        all.add(rests("allocated", switches.allocated()));
        all.add(rests("planned", switches.planned()));
        return texts.get("money.rests", measures.row(all));
    }

    /** From the lowest to the highest a total can be, and on what that depends. */
    public String span(Span span) {
        return span.one()
                ? texts.get("money.span.one")
                : texts.get("money.span", measures.amount(span.low()), measures.money(span.high()));
    }

    /** Hundredths of a percent as percent: {@code 12.5 %}. */
    public String percent(int hundredths) {
        BigDecimal figure = BigDecimal.valueOf(hundredths, 2).stripTrailingZeros();
        return texts.get("money.percent", measures.number(figure, Math.max(0, figure.scale())));
    }

    /** One amount as a share of another, in whole percent; empty when there is nothing to take a share of. */
    public String share(Money part, Money whole) {
        if (whole.minor() <= 0) {
            return "";
        }
        BigDecimal share = BigDecimal.valueOf(part.minor())
                .multiply(BigDecimal.valueOf(100))
                .divide(BigDecimal.valueOf(whole.minor()), 0, RoundingMode.HALF_UP);
        return texts.get("money.percent", measures.number(share, 0));
    }

    /**
     * What an amount is for each hour run, in whole currency: {@code 492 EUR an hour run}; empty where nothing ran.
     *
     * @param running null where it is of nothing that runs
     */
    public String perHour(Money money, @Nullable RunningTime running) {
        if (running == null || running.millis() == 0) {
            return "";
        }
        BigDecimal each =
                money.units().multiply(HOUR).divide(BigDecimal.valueOf(running.millis()), 0, RoundingMode.HALF_UP);
        return texts.get(
                "money.per_hour",
                texts.get(
                        "measures.figure",
                        measures.number(each, 0),
                        money.currency().getCurrencyCode()));
    }

    /** What a bar stands for, in the words of the record: a name, or a word of a closed list. */
    public String subject(Facts facts, Bar bar) {
        Object subject = bar.subject();
        if (subject == null) {
            return texts.get("money.nobody");
        }
        if (subject instanceof Coded word) {
            return new RecordWords(texts).word(word);
        }
        return subject instanceof Id<?> id ? name(facts, id) : subject.toString();
    }

    private static String name(Facts facts, Id<?> id) {
        return RecordTypes.all().stream()
                .map(type -> named(facts, type, id))
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(id.text());
    }

    private static <F extends Fact> Optional<String> named(Facts facts, RecordType<F> type, Id<?> id) {
        return facts.of(type.kind())
                .find(new Id<F>(id.value()))
                .map(entry -> entry.fact().knownAs());
    }

    /** The heading over kinds of part. */
    public String kinds() {
        return texts.get("money.kind");
    }

    /** {@code valve springs}, or that no kind of part is named. */
    public String kind(KindCost cost) {
        return cost.kind() == null ? texts.get("money.kind.none") : new RecordWords(texts).word(cost.kind());
    }

    /** Over what was bought or done when nothing failed. */
    public String kindDue() {
        return texts.get("money.kind.due");
    }

    /** Over what was bought because something failed. */
    public String kindBought() {
        return texts.get("money.kind.bought");
    }

    /** Over what failures of a kind cost besides. */
    public String kindRest() {
        return texts.get("money.kind.rest");
    }

    /** {@code 12 000 JPY at 0.0061}. */
    public String atRate(Money amount, BigDecimal rate) {
        return texts.get("money.at_rate", measures.money(amount), rate.toPlainString());
    }

    private String rests(String what, boolean counted) {
        return texts.get("money.rests." + (counted ? "" : "no_") + what);
    }
}
