package witnessmark.logbook.sheets;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;

/**
 * Reads and saves sheets. Text in, answers out; nothing typed is kept between calls. What a sheet writes is one change, and it
 * is written only when it can be true together with everything in the logbook.
 */
public final class WriteSheet {
    private final Desk desk;
    private final Ids ids;
    private final DayOrder days;
    private volatile @Nullable StandingNow standing;

    /** @param days day or month first in a date of figures */
    public WriteSheet(Desk desk, Ids ids, DayOrder days) {
        this.desk = desk;
        this.ids = ids;
        this.days = days;
    }

    /** The logbook as sheets see it now. */
    public SheetSight sight() {
        View view = desk.view();
        StandingNow last = standing;
        StandingNow now = last != null && last.of() == view ? last : new StandingNow(view);
        standing = now;
        return new SheetSight(view, desk.today().day(), days, desk.who(), now);
    }

    /** What the typed text comes to, field by field. */
    public SheetReading read(LogSheet sheet, Map<SheetField, String> typed) {
        return ReadSheet.read(sheet, new SheetTyped(typed), sight(), ids);
    }

    /** What in it contradicts the rest of the logbook. This may take a while in a large logbook. */
    public List<FoundProblem> check(SheetReading reading) {
        if (reading.entries().isEmpty()) {
            return List.of();
        }
        View view = desk.view();
        return Coherence.clashes(
                        view.facts().with(reading.entries()),
                        reading.entries(),
                        new AsOf(desk.today().day(), view.zone()))
                .stream()
                .map(clash -> {
                    SheetField byKind =
                            reading.blameByKind().get(clash.problem().kind());
                    return new FoundProblem(
                            byKind != null
                                    ? byKind
                                    : reading.blame().get(clash.entry().id()),
                            clash.problem());
                })
                .toList();
    }

    /**
     * Saves the sheet. Queries do not keep it from being saved; what stops does, and then nothing is changed.
     *
     * @param why the words for the history
     */
    public Outcome<Written> save(LogSheet sheet, Map<SheetField, String> typed, String why) {
        SheetReading reading = read(sheet, typed);
        List<Problem> stops = reading.problems().stream().filter(Problem::stops).toList();
        if (stops.isEmpty()) {
            stops = check(reading).stream()
                    .map(FoundProblem::problem)
                    .filter(Problem::stops)
                    .toList();
        }
        if (!stops.isEmpty()) {
            return Outcome.didNot(stops);
        }
        if (reading.entries().isEmpty()) {
            return Outcome.didNot(Problem.of(ProblemKind.NEEDED, sheet.key()));
        }
        return desk.write(why, reading.entries());
    }
}
