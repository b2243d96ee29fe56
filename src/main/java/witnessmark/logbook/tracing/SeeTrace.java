package witnessmark.logbook.tracing;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.RevExponent;
import witnessmark.domain.Run;
import witnessmark.domain.SpeedHistogram;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.kept.Bytes;
import witnessmark.trace.kept.KeptReader;
import witnessmark.trace.look.SpeedWear;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceSettings;

/** Sees the traces of the logbook, as of the day looked at. Reads only. */
public final class SeeTrace {
    private SeeTrace() {}

    /** Those of runs up to the day looked at, the newest run first. */
    public static List<SeenTrace> all(View view) {
        return seen(view, run -> true);
    }

    /** Those of an engine, likewise. */
    public static List<SeenTrace> ofEngine(View view, Id<Engine> engine) {
        return seen(view, run -> run.fact().engine().equals(engine));
    }

    /** Those of a run. */
    public static List<SeenTrace> ofRun(View view, Id<Run> run) {
        return seen(view, other -> other.id().equals(run));
    }

    /** One of them; empty when it is struck out, or its run is. */
    public static Optional<SeenTrace> of(View view, Id<Trace> trace) {
        return view.facts()
                .of(Trace.class)
                .find(trace)
                .filter(Entry::inForce)
                .flatMap(found -> run(view, found).map(run -> see(view.facts(), found, run)));
    }

    /** That of the newest run. */
    public static Optional<Id<Trace>> newest(View view) {
        return view.facts()
                .of(Trace.class)
                .inForce()
                .filter(trace -> run(view, trace).isPresent())
                .max(Comparator.comparing(
                        trace -> run(view, trace).orElseThrow().fact().start()))
                .map(Entry::id);
    }

    private static List<SeenTrace> seen(View view, java.util.function.Predicate<Entry<Run>> wanted) {
        record Pair(Entry<Trace> trace, Entry<Run> run) {}
        return view.facts()
                .of(Trace.class)
                .inForce()
                .flatMap(trace -> run(view, trace).stream().map(run -> new Pair(trace, run)))
                .filter(pair -> wanted.test(pair.run()))
                .sorted(Comparator.comparing((Pair pair) -> pair.run().fact().start())
                        .reversed())
                .map(pair -> see(view.facts(), pair.trace(), pair.run()))
                .toList();
    }

    private static Optional<Entry<Run>> run(View view, Entry<Trace> trace) {
        return view.facts()
                .of(Run.class)
                .find(trace.fact().run())
                .filter(run -> run.inForce() && !run.fact().start().day().isAfter(view.day()));
    }

    private static SeenTrace see(Facts facts, Entry<Trace> trace, Entry<Run> run) {
        Entry<Engine> engine = facts.of(Engine.class).find(run.fact().engine()).orElseThrow();
        SpeedHistogram speeds = SpeedHistogram.parse(trace.fact().speeds());
        Stream<Entry<RevExponent>> exponents =
                facts
                        .of(RevExponent.class)
                        .where(wear -> wear.design().equals(engine.fact().design()))
                        .stream();
        return new SeenTrace(
                trace,
                run,
                engine,
                TraceForm.parse(trace.fact().form()),
                TraceSettings.parse(trace.fact().settings()),
                facts.of(TraceMark.class).where(mark -> mark.trace().equals(trace.id())).stream()
                        .map(Entry::fact)
                        .sorted(Comparator.comparing(TraceMark::at))
                        .toList(),
                speeds,
                speeds.total() == 0
                        ? List.of()
                        : exponents
                                .map(Entry::fact)
                                .sorted(Comparator.comparing(RevExponent::partKind))
                                .map(wear -> SpeedWear.of(speeds, wear))
                                .toList());
    }

    /** The samples kept of a trace; empty when there are none. Blocks. */
    public static Outcome<Optional<KeptTrace>> samples(Logbook logbook, Trace trace) {
        String kept = trace.kept();
        if (kept == null) {
            return Outcome.worked(Optional.empty());
        }
        return logbook.kept(kept).then(found -> {
            if (found.isEmpty()) {
                return Outcome.worked(Optional.empty());
            }
            return open(found.get(), trace);
        });
    }

    private static Outcome<Optional<KeptTrace>> open(Kept kept, Trace trace) {
        try {
            return Outcome.worked(Optional.of(KeptTrace.of(KeptReader.open(Bytes.of(kept.bytes())), trace)));
        } catch (IOException e) {
            return Outcome.didNot(Problem.of(ProblemKind.SAMPLES_CHANGED, trace.name()));
        }
    }
}
