package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Reads and saves sheets. Text in, answers out; nothing typed is kept between calls. What a sheet writes is one change, and it
 * is written only when it can be true together with everything in the logbook.
 */
public final class WriteSheet {
    private final Desk desk;
    private final Ids ids;
    private final SheetUnits units;
    private volatile @Nullable StandingNow standing;

    /** @param units the units of bare figures */
    public WriteSheet(Desk desk, Ids ids, SheetUnits units) {
        this.desk = desk;
        this.ids = ids;
        this.units = units;
    }

    /** The logbook as sheets see it now. */
    public SheetSight sight() {
        View view = desk.view();
        StandingNow last = standing;
        StandingNow now = last != null && last.of() == view ? last : new StandingNow(view);
        standing = now;
        return new SheetSight(view, desk.today().day(), units, desk.who(), now);
    }

    /**
     * A sheet for something new.
     *
     * @param dates a day as people read it
     */
    public TypedSheet fresh(LogSheet sheet, Function<LocalDate, String> dates) {
        return new NewSheet(this, sheet, dates);
    }

    /**
     * A written entry on its own sheet, so that what was typed wrong can be put right; whatever its standing.
     *
     * @param forms sheets that a written entry may be opened on; the plain one of its kind where none of them takes it
     * @param dates a day as people read it
     */
    public <F extends Fact> WrittenSheet<F> open(
            Entry<F> entry, List<LogSheet> forms, Function<LocalDate, String> dates) {
        SheetSight sight = sight();
        LogSheet form = forms.stream()
                .filter(sheet -> sheet.written(entry.fact(), sight).isPresent())
                .findFirst()
                .orElseGet(() -> new RecordSheet<>(entry));
        return new WrittenSheet<>(desk, ids, units, entry, form, dates);
    }

    /** What the typed text comes to, field by field. */
    public SheetReading read(LogSheet sheet, Map<SheetField, String> typed) {
        return ReadSheet.read(sheet, new SheetTyped(typed), sight(), ids);
    }

    /** The same where it is quick; empty where something has to be worked out first. */
    Optional<SheetReading> glance(LogSheet sheet, Map<SheetField, String> typed) {
        return ReadSheet.glance(sheet, new SheetTyped(typed), sight(), ids);
    }

    /** What in it contradicts the rest of the logbook. This may take a while in a large logbook. */
    public List<FoundProblem> check(SheetReading reading) {
        if (reading.entries().isEmpty()) {
            return List.of();
        }
        return found(desk, desk.view().facts().with(reading.entries()), reading.entries(), reading);
    }

    /** What is wrong with entries, each beside the field that a reading names for it. */
    static List<FoundProblem> found(Desk desk, Facts after, List<? extends Entry<?>> entries, SheetReading reading) {
        return Coherence.clashes(
                        after, entries, new AsOf(desk.today().day(), desk.view().zone()))
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
