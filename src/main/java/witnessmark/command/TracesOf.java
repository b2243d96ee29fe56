package witnessmark.command;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.logbook.Desk;
import witnessmark.logbook.tracing.KeptTrace;
import witnessmark.logbook.tracing.SeeTrace;
import witnessmark.logbook.tracing.SeenTrace;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** The traces of a logbook: of all engines, of one, of a run; what each comes to, and what it did between two times. */
@Command(name = "traces", mixinStandardHelpOptions = true)
final class TracesOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", arity = "0..1", paramLabel = "ENGINE", descriptionKey = "command.traces.engine")
    private @Nullable String engine;

    @Option(names = "--run", paramLabel = "NAME", descriptionKey = "command.traces.run")
    private @Nullable String run;

    @Option(names = "--from", paramLabel = "SECONDS", descriptionKey = "command.traces.from")
    private double from;

    @Option(names = "--until", paramLabel = "SECONDS", descriptionKey = "command.traces.until")
    private @Nullable Double until;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    TracesOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "traces", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        List<SeenTrace> traces;
        if (engine == null) {
            traces = SeeTrace.all(desk.view());
        } else {
            Outcome<Entry<Engine>> found = answer.named(desk.view(), Engine.class, engine);
            if (!found.didWork()) {
                return answer.didNot(found.problems());
            }
            traces = SeeTrace.ofEngine(desk.view(), found.orThrow().id());
        }
        String name = run;
        List<SeenTrace> wanted = traces.stream()
                .filter(trace -> name == null || trace.run().fact().name().equalsIgnoreCase(name.strip()))
                .toList();
        TracesText text = new TracesText(tools);
        try {
            if (json) {
                answer.print(text.asJson(
                        answer.node().put("asOf", desk.view().day().toString()), wanted, this::stretch, desk));
            } else {
                text.print(answer::line, wanted, this::stretch, desk);
            }
            return Exit.WORKED;
        } catch (IOException e) {
            return answer.didNot(
                    List.of(Problem.of(ProblemKind.SAMPLES_CHANGED, open.path().toString())));
        }
    }

    /** Its samples, and the stretch of them that is asked for. */
    private Outcome<Optional<TracesText.Stretch>> stretch(Desk desk, SeenTrace trace) {
        return SeeTrace.samples(desk.logbook(), trace.trace().fact())
                .map(found -> found.map(kept -> new TracesText.Stretch(kept, micros(from), end(kept))));
    }

    private long end(KeptTrace kept) {
        Double last = until;
        return last == null ? kept.lasted() : micros(last);
    }

    private static long micros(double seconds) {
        return Math.round(seconds * 1e6);
    }
}
