package witnessmark.logbook.sheets;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.ledger.Holds;
import witnessmark.ledger.Marks;
import witnessmark.ledger.OutWithOthers;
import witnessmark.ledger.Stock;
import witnessmark.ledger.Whereabouts;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.StockLevel;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.View;
import witnessmark.logbook.money.LifeThen;
import witnessmark.quantity.Moment;

/** What holds, how everything stands and where it is in one view, worked out when it is first asked for. */
public final class StandingNow {
    private final View view;
    private @Nullable List<HeldBy> open;
    private @Nullable List<Mark> marks;
    private @Nullable List<Where> parts;
    private @Nullable List<StockLevel> stock;
    private @Nullable OutWithOthers out;
    private volatile @Nullable LifeThen then;

    StandingNow(View view) {
        this.view = view;
    }

    View of() {
        return view;
    }

    /** What holds something, the first first. */
    synchronized List<HeldBy> open() {
        List<HeldBy> known = open;
        if (known == null) {
            known = new Holds(view.ledger()).open();
            open = known;
        }
        return known;
    }

    /** Every mark of every engine and car and of what is fitted in them, worst first. */
    synchronized List<Mark> marks() {
        List<Mark> known = marks;
        if (known == null) {
            known = List.copyOf(new Marks(view.ledger()).all());
            marks = known;
        }
        return known;
    }

    /** Where every part and set is, in the order they were written. */
    synchronized List<Where> parts() {
        List<Where> known = parts;
        if (known == null) {
            known = new Whereabouts(view.ledger()).all();
            parts = known;
        }
        return known;
    }

    /** How much of every batch is there. */
    synchronized List<StockLevel> stock() {
        List<StockLevel> known = stock;
        if (known == null) {
            known = new Stock(view.facts(), view.ledger().asOf()).all();
            stock = known;
        }
        return known;
    }

    /** What parts had run by a moment; nobody who asks for anything else waits meanwhile. */
    LifeThen then(Moment at) {
        return known(at).orElseGet(() -> {
            LifeThen worked = LifeThen.at(view.facts(), at, view.zone());
            then = worked;
            return worked;
        });
    }

    /** The same where that moment was asked for last; empty where it would have to be worked out. */
    Optional<LifeThen> known(Moment at) {
        return Optional.ofNullable(then).filter(known -> known.at().equals(at));
    }

    /** What is out with others. */
    synchronized OutWithOthers out() {
        OutWithOthers known = out;
        if (known == null) {
            known = new OutWithOthers(view.facts(), view.ledger().asOf());
            out = known;
        }
        return known;
    }
}
