package witnessmark.ledger;

import java.util.List;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** An engine is opened once at a time, and runs closed. */
final class BuildChecks {
    private final Surroundings around;
    private final Clashes clashes;

    BuildChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    /** Looks for two builds of one engine that were open at a time. */
    void check() {
        for (Id<Engine> engine : around.engineBuilds.owners()) {
            spans(around.engineBuilds.of(engine)).eachOverlap(around::changed, this::overlap);
        }
    }

    private void overlap(Entry<Build> build, Entry<Build> other) {
        Moment from = Spans.later(build.fact().opened(), other.fact().opened());
        clashes.addIn(
                build,
                "opened",
                ProblemKind.BUILDS_OVERLAP,
                around.names.of(build.fact().engine()),
                build.fact().number(),
                other.fact().number(),
                from);
    }

    /** Asks about a run of an engine that was open, or was not built yet. */
    void check(Entry<Run> run) {
        List<Entry<Build>> builds = around.engineBuilds.of(run.fact().engine());
        Entry<Build> open = spans(builds).inside(run.fact().start().epochMillis());
        if (open != null) {
            clashes.addIn(
                    run,
                    "start",
                    ProblemKind.BUILD_OPEN,
                    around.names.of(run.fact().engine()),
                    open.fact().number(),
                    open.fact().opened());
            return;
        }
        builds.stream()
                .filter(build -> build.fact().number() == 1
                        && run.fact().start().isBefore(build.fact().opened()))
                .findFirst()
                .ifPresent(build -> clashes.addIn(
                        run,
                        "start",
                        ProblemKind.RUN_BEFORE_FIRST_BUILD,
                        around.names.of(run.fact().engine()),
                        build.fact().opened()));
    }

    private static Spans<Build> spans(List<Entry<Build>> builds) {
        return new Spans<>(builds, build -> build.opened().epochMillis(), build -> Spans.end(build.closed()));
    }
}
