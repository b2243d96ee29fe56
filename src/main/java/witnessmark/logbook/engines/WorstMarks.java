package witnessmark.logbook.engines;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.Engine;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Marks;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.standing.MarkOn;

/**
 * How engines and parts stand, worst first: by the same marks as before the team goes. Of what is over, what is past its
 * limit for certain stands before what is only when told running is taken at its high end.
 */
final class WorstMarks {
    private final Facts facts;
    private final Marks marks;

    WorstMarks(LifeLedger ledger) {
        this.facts = ledger.facts();
        this.marks = new Marks(ledger);
    }

    /** Every mark of an engine and of what is fitted in it. */
    List<MarkOn> on(Id<Engine> engine) {
        return worstFirst(marks.ofEngine(engine));
    }

    /** Every mark of a part, wherever it is. */
    List<MarkOn> onPart(Id<Part> part) {
        return worstFirst(marks.ofPart(part));
    }

    private List<MarkOn> worstFirst(List<Mark> all) {
        List<MarkOn> first = new ArrayList<>();
        List<MarkOn> then = new ArrayList<>();
        for (Mark mark : all) {
            MarkOn on = MarkOn.of(facts, mark);
            boolean certain = mark.state().compareTo(MarkState.OVER) <= 0 && !mark.perhapsOver();
            (certain ? first : then).add(on);
        }
        first.addAll(then);
        return first;
    }
}
