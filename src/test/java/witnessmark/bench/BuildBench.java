package witnessmark.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.Zone;
import witnessmark.ledger.BigLogbook;
import witnessmark.ledger.BuildPositions;
import witnessmark.ledger.FreeParts;
import witnessmark.ledger.History;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Marks;
import witnessmark.logbook.View;
import witnessmark.logbook.building.SeeBuild;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.quantity.Moment;

/**
 * How long the page of a build takes to read in a logbook of twenty seasons, and its parts; the first time
 * and medians then. It is the thread's own time: the machine may have other work.
 */
public final class BuildBench {
    private static final int ROUNDS = 9;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private BuildBench() {}

    /** Prints the figures; takes no arguments. */
    public static void main(String[] none) {
        History book = BigLogbook.twentySeasons(1);
        Id<Engine> engine = book.engines().get(100);
        List<Entry<Run>> runs =
                book.story().facts().of(Run.class).where(run -> run.engine().equals(engine));
        Moment last = book.asOf().last();
        Moment midway = runs.get(runs.size() / 2).fact().start();
        Entry<Build> open = build(1, engine, 2, earlier(last, 3_600), null);
        Entry<Build> closed = build(2, engine, 1, earlier(midway, 86_400), midway);
        Facts facts = book.story().facts().with(List.of(open, closed));
        View view = new View(facts, book.asOf().day(), book.asOf().zone(), LifeLedger.of(facts, book.asOf()), false);
        time("page of the open build", () -> SeeBuild.of(view, open.id()));
        time("page of a closed build", () -> SeeBuild.of(view, closed.id()));
        Marks marks = new Marks(view.ledger());
        time("marks made ready", () -> new Marks(view.ledger()));
        time("positions of the open build", () -> new BuildPositions(view.ledger(), marks).of(open));
        time("what lies free on the shelf", () -> new FreeParts(view.ledger(), marks));
        time("the measuring sheet of the open build", () -> SeeBuildSheet.of(view, open.id()));
        time("builds whose parts list can be copied", () -> SeeBuild.earlier(view, engine, open.id()));
    }

    private static Moment earlier(Moment moment, long seconds) {
        return Moment.of(moment.instant().minusSeconds(seconds), moment.zone());
    }

    private static Entry<Build> build(int number, Id<Engine> engine, int of, Moment from, @Nullable Moment to) {
        Build build = new Build(engine, of, EnumSet.allOf(Zone.class), from, to, "", "");
        return new Entry<>(new Id<>(new UUID(0x7000, number)), build, Standing.IN_FORCE, null, 1);
    }

    private static void time(String what, Supplier<Object> work) {
        long[] took = new long[ROUNDS];
        int answer = 0;
        long first = 0;
        for (int i = 0; i < ROUNDS + 3; i++) {
            long begun = THREADS.getCurrentThreadCpuTime();
            answer += System.identityHashCode(work.get()) == 0 ? 1 : 0;
            took[i % ROUNDS] = THREADS.getCurrentThreadCpuTime() - begun;
            first = i == 0 ? took[0] : first;
        }
        Arrays.sort(took);
        System.out.printf(
                Locale.ROOT,
                "%-44s first %8.1f ms, then median %8.1f, best %8.1f, worst %8.1f (%d)%n",
                what,
                first / 1e6,
                took[ROUNDS / 2] / 1e6,
                took[0] / 1e6,
                took[ROUNDS - 1] / 1e6,
                answer);
    }
}
