package witnessmark.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.function.LongSupplier;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.Standing;
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;
import witnessmark.ledger.BigLogbook;
import witnessmark.ledger.Coherence;
import witnessmark.ledger.History;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Marks;
import witnessmark.ledger.RunDraft;
import witnessmark.ledger.RunEffect;
import witnessmark.ledger.Story;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** How long the ledger takes on twenty seasons; medians over warm rounds. */
public final class LedgerBench {
    private static final int ROUNDS = 40;

    private LedgerBench() {}

    /** Prints the figures; takes no arguments. */
    public static void main(String[] none) {
        History book = BigLogbook.twentySeasons(1);
        Facts facts = book.story().facts();
        System.out.printf(
                Locale.ROOT,
                "%d engines, %d parts, %d fitments, %d runs%n",
                book.engines().size(),
                book.parts().size(),
                facts.of(Fitment.class).size(),
                facts.of(Run.class).size());
        LifeLedger ledger = LifeLedger.of(facts, book.asOf());
        Entry<Run> run = candidate(book);
        Facts newer = facts.with(List.of(run));
        time("build the index", () -> LifeLedger.of(facts, book.asOf()).hashCode());
        time("build and all part lives", () -> lives(LifeLedger.of(facts, book.asOf()), book, Counter.RUNNING));
        time("all part lives again", () -> lives(ledger, book, Counter.RUNNING));
        time("build and all lives by all counters", () -> {
            LifeLedger fresh = LifeLedger.of(facts, book.asOf());
            long sum = 0;
            for (Counter counter : Counter.fedByRuns()) {
                sum += lives(fresh, book, counter);
            }
            return sum;
        });
        time("one saved run: facts", () -> facts.with(List.of(run)).revision());
        time("one saved run: ledger and the engine's part lives", () -> {
            LifeLedger after = ledger.after(newer);
            return after.fittedAt(run.fact().engine(), run.fact().start()).values().stream()
                    .mapToLong(fitted ->
                            after.life(fitted.fact().part(), Counter.RUNNING).total())
                    .sum();
        });
        time("one saved run: ledger and all part lives", () -> lives(ledger.after(newer), book, Counter.RUNNING));
        time(
                "one run: effect on every mark",
                () -> RunEffect.of(ledger, run).marks().size());
        time(
                "one run: coherence",
                () -> Coherence.forRun(facts, run, book.asOf()).size());
        time("every mark everywhere", () -> new Marks(ledger).all().size());
        LifeLedger busy = LifeLedger.of(withAnEventToCome(book), book.asOf());
        time(
                "the same with an event, its timetable and rules",
                () -> new Marks(busy).all().size());
        time("the effect of one run then", () -> RunEffect.of(busy, run).marks().size());
        time(
                "coherence of everything",
                () -> Coherence.forEntries(facts, book.story().entries(), book.asOf())
                        .size());
    }

    /** The big logbook with every car entered for an event of six runs, and three rules that runs can raise. */
    private static Facts withAnEventToCome(History book) {
        List<Entry<?>> more = new ArrayList<>();
        LocalDate day = book.asOf().day().plusDays(3);
        Id<Event> event = id(1);
        more.add(entry(
                event, new Event("Round 1", "Thornacre", day, day, book.asOf().zone(), null, "")));
        for (int i = 0; i < 6; i++) {
            more.add(entry(
                    id(2 + i),
                    new PlannedRun(
                            event,
                            i + 1,
                            RunKind.RACE,
                            "Race " + (i + 1),
                            day,
                            LocalTime.of(9 + i, 0),
                            Story.minutes(20))));
        }
        int next = 10;
        for (Id<Car> car : book.cars()) {
            more.add(entry(id(next++), new EventEntry(event, car, null)));
        }
        more.add(entry(id(next++), rule(TriggerKind.SPEED_ABOVE, 8500)));
        more.add(entry(id(next++), rule(TriggerKind.WATER_ABOVE, 381_150)));
        more.add(entry(id(next), rule(TriggerKind.OIL_PRESSURE_BELOW, 250_000)));
        return book.story().facts().with(more);
    }

    private static Trigger rule(TriggerKind kind, long figure) {
        return new Trigger(
                kind.code(),
                kind,
                null,
                figure,
                null,
                null,
                null,
                Set.of(PartKind.RODS),
                "",
                LimitRank.OWN,
                "",
                LocalDate.EPOCH,
                null);
    }

    private static <F extends Fact> Id<F> id(long number) {
        return new Id<>(new UUID(0x7001, number));
    }

    private static <F extends Fact> Entry<F> entry(Id<F> id, F fact) {
        return new Entry<>(id, fact, Standing.IN_FORCE, null, 1);
    }

    private static Entry<Run> candidate(History book) {
        Id<Engine> engine = book.engines().get(100);
        Moment start = Moment.of(
                book.asOf().last().instant().minusSeconds(7200), book.asOf().zone());
        Run run = new RunDraft(engine, book.cars().get(100), start, Story.minutes(20)).written();
        return new Entry<>(new Id<>(new UUID(0x7000, 1)), run, Standing.IN_FORCE, null, 1);
    }

    private static long lives(LifeLedger ledger, History book, Counter counter) {
        long sum = 0;
        for (Id<Part> part : book.parts()) {
            sum += ledger.life(part, counter).total();
        }
        return sum;
    }

    /** Prints wall time and this thread's own time: on a machine with other work the second is nearer the truth. */
    private static void time(String what, LongSupplier work) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long[] wall = new long[ROUNDS];
        long[] own = new long[ROUNDS];
        long answer = 0;
        for (int i = 0; i < 2 * ROUNDS; i++) {
            long begun = System.nanoTime();
            long used = threads.getCurrentThreadCpuTime();
            answer = work.getAsLong();
            own[i % ROUNDS] = threads.getCurrentThreadCpuTime() - used;
            wall[i % ROUNDS] = System.nanoTime() - begun;
        }
        Arrays.sort(wall);
        Arrays.sort(own);
        System.out.printf(
                Locale.ROOT,
                "%-52s median %8.3f ms (own time %8.3f), best %8.3f, worst of %d %8.3f (%d)%n",
                what,
                wall[ROUNDS / 2] / 1e6,
                own[ROUNDS / 2] / 1e6,
                wall[0] / 1e6,
                ROUNDS,
                wall[ROUNDS - 1] / 1e6,
                answer);
    }
}
