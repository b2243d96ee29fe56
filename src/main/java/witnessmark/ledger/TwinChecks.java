package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.StartKnown;
import witnessmark.ledger.result.About;
import witnessmark.outcome.ProblemKind;

/** Runs that cannot both have been: they overlap, are perhaps one, or are the same planned run of one car. */
final class TwinChecks {
    /** Two clocks on one pit wall differ by no more than this. */
    private static final long A_MINUTE = 60_000;

    private final Surroundings around;
    private final Clashes clashes;
    private final Set<Id<Run>> twins = new HashSet<>();

    TwinChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    void check() {
        for (Id<Engine> engine : around.engineRuns.owners()) {
            List<Entry<Run>> runs = counting(around.engineRuns.of(engine));
            overlaps(runs);
            perhapsSame(runs);
        }
        for (Id<Car> car : around.carRuns.owners()) {
            List<Entry<Run>> runs = counting(around.carRuns.of(car));
            perhapsSame(runs);
            planned(car, runs);
        }
    }

    private static List<Entry<Run>> counting(List<Entry<Run>> runs) {
        return runs.stream().filter(run -> run.fact().perhapsSame() == null).toList();
    }

    /**
     * An estimated time proves nothing: where one is, an overlap is asked, and the other run is never refused for it. Where both
     * are, as with runs logged one after the other in the evening, there is nothing to ask.
     */
    private void overlaps(List<Entry<Run>> runs) {
        List<Entry<Run>> stated = runs.stream().filter(run -> !isEstimate(run)).toList();
        around.runs(stated).eachOverlap(around::changed, (run, other) -> overlap(run, ProblemKind.RUNS_OVERLAP, other));
        around.runs(runs).eachOverlap(around::changed, (run, other) -> {
            if (isEstimate(run) != isEstimate(other)) {
                overlap(run, ProblemKind.RUNS_OVERLAP_ABOUT, other);
            }
        });
    }

    private static boolean isEstimate(Entry<Run> run) {
        return run.fact().startKnown() == StartKnown.ESTIMATE;
    }

    private void overlap(Entry<Run> run, ProblemKind kind, Entry<Run> other) {
        Run there = other.fact();
        clashes.add(run, kind, around.names.of(there.engine()), there.name(), About.start(there), About.back(there));
    }

    /** Sorted by running time and then by start, runs that are perhaps one stand beside each other. */
    private void perhapsSame(List<Entry<Run>> runs) {
        List<Entry<Run>> alike = new ArrayList<>(runs);
        alike.sort(
                Comparator.<Entry<Run>>comparingLong(run -> run.fact().running().millis())
                        .thenComparing(run -> run.fact().start())
                        .thenComparing(Entry::id));
        for (int i = 0; i < alike.size(); i++) {
            Entry<Run> run = alike.get(i);
            if (!around.changed(run)) {
                continue;
            }
            if (i > 0 && alike(alike.get(i - 1), run)) {
                foundTwin(run, alike.get(i - 1));
            } else if (i + 1 < alike.size() && !around.changed(alike.get(i + 1)) && alike(run, alike.get(i + 1))) {
                foundTwin(run, alike.get(i + 1));
            }
        }
    }

    private static boolean alike(Entry<Run> earlier, Entry<Run> later) {
        long apart = later.fact().start().epochMillis() - earlier.fact().start().epochMillis();
        return earlier.fact().running().equals(later.fact().running()) && apart <= A_MINUTE;
    }

    private void planned(Id<Car> car, List<Entry<Run>> runs) {
        Map<Id<PlannedRun>, List<Entry<Run>>> taken = new HashMap<>();
        for (Entry<Run> run : runs) {
            @Nullable Id<PlannedRun> planned = run.fact().planned();
            if (planned != null) {
                taken.computeIfAbsent(planned, id -> new ArrayList<>()).add(run);
            }
        }
        taken.forEach((planned, taking) -> {
            for (Entry<Run> run : taking) {
                Entry<Run> other = other(run, taking);
                if (around.changed(run) && other != null) {
                    foundTwin(run, other);
                    clashes.add(
                            run,
                            ProblemKind.PLANNED_RUN_TAKEN,
                            around.names.planned(planned),
                            around.names.car(car),
                            About.start(other.fact()));
                }
            }
        });
    }

    /** The first of them, or for the first itself one that was not changed. */
    private @Nullable Entry<Run> other(Entry<Run> run, List<Entry<Run>> taking) {
        if (run != taking.get(0)) {
            return taking.get(0);
        }
        return taking.stream()
                .filter(each -> !around.changed(each) && each != run)
                .findFirst()
                .orElse(null);
    }

    private void foundTwin(Entry<Run> run, Entry<Run> other) {
        if (twins.add(run.id())) {
            Run there = other.fact();
            clashes.add(
                    run,
                    ProblemKind.PERHAPS_SAME_RUN,
                    around.names.of(there.engine()),
                    there.name(),
                    About.start(there),
                    there.running());
        }
    }
}
