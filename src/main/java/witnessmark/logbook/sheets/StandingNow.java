package witnessmark.logbook.sheets;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.ledger.Holds;
import witnessmark.ledger.Marks;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.Mark;
import witnessmark.logbook.View;

/** What holds and how everything stands in one view, worked out when it is first asked for. */
public final class StandingNow {
    private final View view;
    private @Nullable List<HeldBy> open;
    private @Nullable List<Mark> marks;

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
}
