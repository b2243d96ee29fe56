package witnessmark.logbook.told;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.domain.ToldRunning;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.ledger.result.LifeChange;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.run.FieldReading;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Counter;
import witnessmark.quantity.typed.DayOrder;

/**
 * Writes down running told by others: by whom, how he knows, and between which hours it lies. Lives add the likely
 * figure and say how much of it is told; limits are judged at the highest. Text in, answers out, as with a run.
 */
public final class TellRunning {
    private final Desk desk;
    private final Ids ids;
    private final DayOrder days;

    /** @param days day or month first in a date of figures */
    public TellRunning(Desk desk, Ids ids, DayOrder days) {
        this.desk = desk;
        this.ids = ids;
        this.days = days;
    }

    /** Nothing is filled in before anybody types: it is all hearsay. */
    public Map<ToldField, String> fresh() {
        return new EnumMap<>(ToldField.class);
    }

    /** The engines, in the order they were written down. */
    public List<Entry<Engine>> engines() {
        return desk.view().facts().of(Engine.class).where(engine -> true);
    }

    /** What the typed text comes to. */
    public ToldReading read(Map<ToldField, String> typed) {
        View view = desk.view();
        LocalDate today = desk.today().day();
        ReadTold reader = new ReadTold(view.facts(), today, view.zone(), days);
        @Nullable ToldRunning told = reader.read(typed);
        if (told == null) {
            return new ToldReading(reader.fields(), null);
        }
        Entry<ToldRunning> entry = new Entry<>(ids.next(), told, Standing.IN_FORCE, null, 1);
        Coherence.forEntries(view.facts().with(List.of(entry)), List.of(entry), new AsOf(today, view.zone())).stream()
                .filter(Problem::stops)
                .forEach(problem -> reader.wrong(ToldField.HIGHEST, problem));
        return new ToldReading(reader.fields(), entry);
    }

    /** The engine's whole life in running time without what is told and with it; empty while it cannot be told. */
    public Optional<LifeChange> life(ToldReading reading) {
        Entry<ToldRunning> told = reading.told();
        if (told == null) {
            return Optional.empty();
        }
        View view = desk.view();
        Id<Engine> engine = told.fact().engine();
        return Optional.of(new LifeChange(
                view.ledger().engineLife(engine, Counter.RUNNING),
                view.ledger().after(view.facts().with(List.of(told))).engineLife(engine, Counter.RUNNING)));
    }

    /**
     * Saves it.
     *
     * @param why the words for the history
     */
    public Outcome<Written> save(Map<ToldField, String> typed, String why) {
        ToldReading reading = read(typed);
        Entry<ToldRunning> told = reading.told();
        if (reading.stops() || told == null) {
            List<Problem> problems = reading.fields().values().stream()
                    .map(FieldReading::problem)
                    .filter(java.util.Objects::nonNull)
                    .toList();
            return Outcome.didNot(problems);
        }
        return desk.write(why, List.of(told));
    }
}
