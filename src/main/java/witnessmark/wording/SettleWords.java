package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import witnessmark.cost.result.ToSettle;
import witnessmark.cost.result.Unsettled;
import witnessmark.domain.Car;
import witnessmark.domain.CostLine;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.quantity.Money;

/** Words money that is not settled yet, the same on the screen and on paper. */
public final class SettleWords {
    private final Texts texts;
    private final Measures measures;

    public SettleWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** What is to be done: {@code ask it back}, {@code charge to customer C1}. */
    public String what(ToSettle row) {
        return texts.get(key(row.what()), row.line().fact().customer());
    }

    /** What the cost was for, with its rate where it was in another currency. */
    public String cost(ToSettle row) {
        CostLine line = row.line().fact();
        Money amount = row.amount();
        if (row.home() == null) {
            return measures.row(List.of(line.what(), measures.money(amount)));
        }
        return line.rate() == null
                ? line.what()
                : measures.row(List.of(line.what(), new MoneyWords(texts, measures).atRate(amount, line.rate())));
    }

    /** {@code Round 7, Quarrendale, car 41}; empty where it is for none. */
    public String where(Facts facts, CostLine line) {
        List<String> where = new ArrayList<>();
        if (line.event() != null) {
            where.add(facts.of(Event.class).get(line.event()).name());
        }
        if (line.car() != null) {
            where.add(texts.get(
                    "season.forCar", facts.of(Car.class).get(line.car()).name()));
        }
        return where.isEmpty() ? "" : measures.row(where);
    }

    /** The last day; empty where there is none. */
    public String until(ToSettle row) {
        return row.until() == null ? "" : measures.date(row.until());
    }

    /** How much, in the home currency; that there is no rate where nobody wrote one down. */
    public String amount(ToSettle row) {
        return row.home() == null ? texts.get("season.settle.noRate") : measures.amount(row.home());
    }

    /** What rows of a kind come to: {@code to be asked back}. */
    public String sum(ToSettle.What what) {
        return texts.get(key(what.together()) + ".sum");
    }

    /** All sums in a sentence, and what keeps them from being all there is. */
    public List<String> notes(Unsettled all) {
        List<String> notes = new ArrayList<>();
        if (all.noRate() > 0) {
            notes.add(texts.get("season.settle.notCounted", all.noRate()));
        }
        if (all.twice() > 0) {
            notes.add(texts.get("season.settle.twice", all.twice()));
        }
        return notes;
    }

    /** {@code To be asked back 1 040.00, to be charged 318.00}; empty where there is no sum. */
    public String sums(Unsettled all) {
        List<String> said = all.sums().entrySet().stream()
                .map(sum -> texts.get("money.column_of", sum(sum.getKey()), measures.amount(sum.getValue())))
                .toList();
        return said.isEmpty() ? "" : new RecordWords(texts).label(measures.row(said));
    }

    private static String key(ToSettle.What what) {
        return "season.settle." + what.name().toLowerCase(Locale.ROOT);
    }
}
