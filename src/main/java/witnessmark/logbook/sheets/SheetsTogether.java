package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.ledger.result.Clash;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/**
 * Several sheets written as one change. Each is read as if those before it were written already, by the same rules as
 * alone; what is written is held against the logbook once, as a whole.
 */
public final class SheetsTogether {
    private final Desk desk;
    private final Ids ids;
    private final SheetUnits units;

    /** @param units the units of bare figures */
    public SheetsTogether(Desk desk, Ids ids, SheetUnits units) {
        this.desk = desk;
        this.ids = ids;
        this.units = units;
    }

    /**
     * One of them.
     *
     * @param name what it is about; of several about the same those after one that stops are not read
     * @param typed what stands in its fields besides what stands there before anybody types, given what is written then
     */
    public record Step(String name, LogSheet sheet, Function<Facts, Map<SheetField, String>> typed) {}

    /**
     * What is wrong, and where.
     *
     * @param step the step it belongs to, or null when it belongs to none
     * @param field beside which it is shown, or null
     */
    public record Found(@Nullable Step step, @Nullable SheetField field, Problem problem) {}

    /**
     * What they came to.
     *
     * @param found what is wrong, step by step
     * @param entries what would be written, each entry once as it is to stand; a step that stops writes nothing of its own
     * @param blame which step made an entry last
     */
    public record Reading(List<Found> found, List<Entry<?>> entries, Map<Id<?>, Blame> blame) {
        public Reading {
            found = List.copyOf(found);
            entries = List.copyOf(entries);
            blame = Map.copyOf(blame);
        }

        public boolean stops() {
            return found.stream().anyMatch(each -> each.problem().stops());
        }

        /** The same with every entry as it is after all. */
        public Reading with(UnaryOperator<Entry<?>> finished) {
            return new Reading(found, entries.stream().<Entry<?>>map(finished).toList(), blame);
        }
    }

    /** The step that made an entry, with the fields its problems stand beside. */
    public record Blame(Step step, SheetReading reading) {
        private @Nullable SheetField field(Clash clash) {
            SheetField byKind = reading.blameByKind().get(clash.problem().kind());
            return byKind != null ? byKind : reading.blame().get(clash.entry().id());
        }
    }

    /** @param first entries that are written before the first of them, as they are to stand */
    public Reading read(Collection<? extends Entry<?>> first, List<Step> steps) {
        View base = desk.view();
        Map<Id<?>, Entry<?>> all = new LinkedHashMap<>();
        Map<Id<?>, Blame> blame = new HashMap<>();
        List<Found> found = new ArrayList<>();
        first.forEach(entry -> all.put(entry.id(), entry));
        View now = after(base, all.values());
        StandingNow standing = new StandingNow(now);
        Set<String> stopped = new HashSet<>();
        for (Step step : steps) {
            if (stopped.contains(step.name())) {
                continue; // what it would say of what is missing before it was said there
            }
            SheetSight sight = new SheetSight(now, desk.today().day(), units, desk.who(), standing);
            Map<SheetField, String> typed = new HashMap<>(step.sheet().fresh(sight));
            typed.putAll(step.typed().apply(now.facts()));
            SheetReading reading = ReadSheet.read(step.sheet(), new SheetTyped(typed), sight, ids);
            for (SheetField field : reading.asked()) {
                Problem problem = reading.of(field).problem();
                if (problem != null) {
                    found.add(new Found(step, field, problem));
                    stopped.addAll(problem.stops() ? Set.of(step.name()) : Set.of());
                }
            }
            for (Entry<?> entry : reading.entries()) {
                all.put(entry.id(), entry);
                blame.put(entry.id(), new Blame(step, reading));
            }
            if (!reading.entries().isEmpty()) {
                now = after(base, all.values());
                standing = new StandingNow(now);
            }
        }
        return new Reading(
                found,
                all.values().stream()
                        .<Entry<?>>map(entry -> once(base.facts(), entry))
                        .toList(),
                blame);
    }

    /** What in it contradicts the rest of the logbook. This may take a while in a large logbook. */
    public List<Found> check(Reading reading) {
        if (reading.entries().isEmpty()) {
            return List.of();
        }
        Facts after = desk.view().facts().with(reading.entries());
        AsOf today = new AsOf(desk.today().day(), desk.view().zone());
        return Coherence.clashes(after, reading.entries(), today).stream()
                .map(clash -> blamed(reading, clash))
                .toList();
    }

    private static Found blamed(Reading reading, Clash clash) {
        Blame of = reading.blame().get(clash.entry().id());
        return of == null
                ? new Found(null, null, clash.problem())
                : new Found(of.step(), of.field(clash), clash.problem());
    }

    /** Writes them; blocks. Queries do not keep them from being written; what stops does, and then nothing is changed. */
    public Outcome<Written> save(Reading reading, String why) {
        List<Problem> stops = stopping(reading.found());
        if (stops.isEmpty()) {
            stops = stopping(check(reading));
        }
        return stops.isEmpty() ? desk.write(why, reading.entries()) : Outcome.didNot(stops);
    }

    private static List<Problem> stopping(List<Found> found) {
        return found.stream().map(Found::problem).filter(Problem::stops).toList();
    }

    private static View after(View base, Collection<Entry<?>> entries) {
        if (entries.isEmpty()) {
            return base;
        }
        Facts facts = base.facts().with(entries);
        return new View(facts, base.day(), base.zone(), base.ledger().after(facts), base.readOnly());
    }

    /** Changed several times on the way, it is written once. */
    private static <F extends Fact> Entry<F> once(Facts before, Entry<F> entry) {
        long rev = before.of(kind(entry)).find(entry.id()).map(Entry::rev).orElse(0L) + 1;
        return entry.rev() == rev
                ? entry
                : new Entry<>(entry.id(), entry.fact(), entry.standing(), entry.struckBecause(), rev);
    }

    @SuppressWarnings("unchecked") // an entry is of the kind of its fact
    private static <F extends Fact> Class<F> kind(Entry<F> entry) {
        return (Class<F>) entry.fact().getClass();
    }
}
