package witnessmark.desktop.traces;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.domain.StartKnown;
import witnessmark.logbook.tracing.BroughtBefore;
import witnessmark.logbook.tracing.LikelyRun;
import witnessmark.logbook.tracing.TraceField;
import witnessmark.logbook.tracing.TraceProposal;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Of which run a trace is and what it would change of it, in words. */
final class ForRunModel {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final Supplier<ZoneId> zone;

    /** @param zone of the clock by which days and times are told */
    ForRunModel(Texts texts, Measures measures, Supplier<ZoneId> zone) {
        this.texts = texts;
        this.measures = measures;
        this.zone = zone;
        this.records = new RecordWords(texts);
    }

    /**
     * A figure that may be taken.
     *
     * @param known how the run's own is known; empty when it says nothing
     * @param same whether both say the same
     */
    record Line(TraceField field, String name, String own, String known, String trace, boolean same) {}

    /** A run as it is picked: its name, when, its car and engine. */
    String run(Entry<Run> entry, Facts facts) {
        Run run = entry.fact();
        String engine = facts.of(Engine.class).get(run.engine()).number();
        return run.car() == null
                ? texts.get("traces.run.dyno", run.name(), measures.start(run), engine)
                : texts.get(
                        "traces.run",
                        run.name(),
                        measures.start(run),
                        facts.of(Car.class).get(run.car()).name(),
                        engine);
    }

    /** When and for which run it was brought in before. */
    String before(BroughtBefore before, Facts facts) {
        String run = run(before.run(), facts);
        Instant at = before.at();
        return at == null
                ? texts.get("traces.before", run)
                : texts.get("traces.before.by", measures.fullMoment(Moment.of(at, zone.get())), before.by(), run);
    }

    /** What speaks for a run. */
    String because(LikelyRun run) {
        List<String> said = run.because().stream()
                .sorted(Comparator.naturalOrder())
                .map(each -> texts.get("traces.because." + each.name().toLowerCase(java.util.Locale.ROOT)))
                .toList();
        String because =
                said.isEmpty() ? texts.get("traces.because.nothing") : texts.get("traces.because", measures.all(said));
        return run.hasTrace() ? because + " " + texts.get("traces.because.traced") : because;
    }

    /** Why nothing can be brought in as it stands; empty when something can. */
    String whyNot(TraceModel file) {
        if (file.isAsking()) {
            return texts.get("traces.answer_first");
        }
        if (!file.isRead() || file.isDone(file.part()) || file.before().isPresent()) {
            return "";
        }
        return file.proposal()
                .map(proposal -> proposal.stops() ? texts.get("traces.refused") : "")
                .orElseGet(() -> texts.get("traces.pick_first"));
    }

    /** Whether its time can be that of the run in hand, as far as that is known. */
    static boolean isTimed(TraceModel file) {
        return file.proposal().stream()
                .flatMap(now -> now.problems().stream())
                .map(Problem::kind)
                .noneMatch(kind -> kind == ProblemKind.TRACE_TIME_BASE || kind == ProblemKind.TRACE_ENDS_EARLY);
    }

    /** What is to be known of the file; not that it is cut short where its run says so, since nothing of it can be taken. */
    static List<Problem> known(TraceModel file) {
        boolean said = file.proposal().stream()
                .flatMap(now -> now.problems().stream())
                .anyMatch(problem -> problem.kind() == ProblemKind.TRACE_ENDS_EARLY);
        return file.problems().stream()
                .filter(problem -> !said || problem.kind() != ProblemKind.TRACE_CUT_SHORT)
                .toList();
    }

    /** What the run and the trace say, a line for each figure of the trace. */
    List<Line> lines(TraceProposal proposal) {
        List<Line> lines = new ArrayList<>();
        Run run = proposal.run().fact();
        for (TraceField field : TraceField.values()) {
            Object figure = proposal.figures().get(field);
            if (figure != null) {
                String own = own(run, field).map(this::figure).orElse("");
                String trace = figure(figure);
                lines.add(new Line(
                        field,
                        texts.get("traces.field." + field.name().toLowerCase(java.util.Locale.ROOT)),
                        own.isEmpty() ? texts.get("traces.own.nothing") : own,
                        own.isEmpty() ? "" : known(run, field),
                        trace,
                        own.equals(trace)));
            }
        }
        return lines;
    }

    private String known(Run run, TraceField field) {
        if (field == TraceField.START) {
            return run.startKnown() == StartKnown.ESTIMATE ? texts.get("traces.own.estimated") : "";
        }
        return field.counter()
                .map(counter -> records.word(run.knownBy().of(counter)))
                .orElse("");
    }

    private static Optional<Object> own(Run run, TraceField field) {
        Function<Run, @Nullable Object> of = switch (field) {
            case START -> Run::start;
            case RUNNING -> Run::running;
            case LOADED -> Run::loaded;
            case HIGH_SPEED -> Run::highSpeed;
            case DISTANCE -> Run::distance;
            case HEAT_CYCLES -> Run::heatCycles;
            case PULLS -> Run::pulls;
            case OVER_REVS -> Run::overRevs;
            case HIGHEST -> Run::highest;
            case WATER -> Run::waterHighest;
            case OIL_TEMPERATURE -> Run::oilHighest;
            case OIL_PRESSURE -> Run::oilPressure;
        };
        return Optional.ofNullable(of.apply(run));
    }

    private String figure(Object figure) {
        if (figure instanceof RunningTime time) {
            return measures.running(time);
        }
        if (figure instanceof EngineSpeed speed) {
            return measures.speed(speed);
        }
        if (figure instanceof Temperature temperature) {
            return measures.temperature(temperature);
        }
        if (figure instanceof Pressure pressure) {
            return measures.pressure(pressure);
        }
        if (figure instanceof Distance distance) {
            return measures.distance(distance);
        }
        return figure instanceof Moment moment ? measures.moment(moment) : String.valueOf(figure);
    }
}
