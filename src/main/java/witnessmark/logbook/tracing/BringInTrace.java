package witnessmark.logbook.tracing;

import java.io.IOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongPredicate;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.LoggerForm;
import witnessmark.domain.OverRev;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.SpeedSource;
import witnessmark.domain.Standing;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Beside;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.trace.SampleSink;
import witnessmark.trace.kept.KeptWriter;
import witnessmark.trace.kept.SampleDigest;
import witnessmark.trace.reduce.Outliner;
import witnessmark.trace.reduce.TimeBaseCheck;
import witnessmark.trace.result.Excursion;
import witnessmark.trace.result.Outline;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.RunFigures;
import witnessmark.trace.result.TimeBase;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceSettings;

/**
 * Brings a logger's file into the logbook: it is read once, held against the run it is of, and what a person takes of it
 * becomes the run's, measured. Reading blocks and is done off the event thread.
 */
public final class BringInTrace {
    private final Desk desk;
    private final Ids ids;
    private final Beside beside;

    public BringInTrace(Desk desk, Ids ids) {
        this(desk, ids, Beside.none());
    }

    /** @param beside takes half of the work of reading a file */
    public BringInTrace(Desk desk, Ids ids, Beside beside) {
        this.desk = desk;
        this.ids = ids;
        this.beside = beside;
    }

    /** By what figures a trace of an engine is worked out. */
    public TraceSettings settings(Id<Engine> engine) {
        Facts facts = desk.view().facts();
        Id<EngineDesign> design = facts.of(Engine.class).get(engine).design();
        return SettingsOfDesign.of(facts, design);
    }

    /**
     * By what figures a file is worked out before anybody said of which run it is: those of the engine its name leads to,
     * else of the run written last, else what is usual.
     */
    public TraceSettings settings(String file) {
        Facts facts = desk.view().facts();
        return RunsOfTrace.named(facts, file, desk.view().zone())
                .or(() -> facts.of(Run.class)
                        .inForce()
                        .max(Comparator.comparing(run -> run.fact().start())))
                .map(run -> settings(run.fact().engine()))
                .orElseGet(TraceSettings::usual);
    }

    /**
     * Reads a file; nothing is written.
     *
     * @param said what its text leaves open
     * @param keep whether its samples are wanted in the logbook
     * @param goOn is told how many bytes of its text were read, and whether to go on
     * @return what was read, with the questions that are open and except for what is to be known of the file; or why nothing was
     */
    public Outcome<BroughtTrace> read(
            LoggerFile file, TraceAnswers said, TraceSettings settings, boolean keep, LongPredicate goOn) {
        try {
            long size = file.size();
            SampleDigest digest = new SampleDigest();
            HeldBytes held = new HeldBytes(Kept.MOST);
            Outliner outliner = new Outliner();
            SampleSink both = SampleSink.both(digest, outliner);
            SampleSink samples = new SamplesBeside(beside, keep ? SampleSink.both(both, new KeptWriter(held)) : both);
            KnownFile known = new KnownFile(file, size, beside);
            Outcome<ReduceTrace.Found> found =
                    ReduceTrace.of(known, said, this::remembered, settings, Optional.of(samples), goOn);
            String content = found.didWork() ? known.sha256() : "";
            if (file.size() != size) {
                return Outcome.didNot(Problem.of(ProblemKind.TRACE_GROWS, file.name()));
            }
            return found.map(all -> new BroughtTrace(
                    file.name(),
                    size,
                    content,
                    digest.text(),
                    all,
                    settings,
                    all.read() == null ? Outline.none() : outliner.outline(),
                    keep && all.read() != null ? held.kept().orElse(null) : null));
        } catch (IOException e) {
            return Outcome.didNot(Problem.of(ProblemKind.TRACE_BROKE_OFF, 0L, String.valueOf(e.getMessage())));
        }
    }

    /** Of which run a part of it may be: all, the likeliest first. */
    public List<LikelyRun> likeliest(BroughtTrace trace, int part) {
        return RunsOfTrace.likeliest(
                desk.view().facts(), trace, part, desk.view().zone());
    }

    /** The same without what speaks for them. */
    public List<Entry<Run>> runs(BroughtTrace trace, int part) {
        return likeliest(trace, part).stream().map(LikelyRun::run).toList();
    }

    /** Whether the first of them is likelier than the next by more than its length, and of its day. */
    public boolean isSure(BroughtTrace trace, int part) {
        return isSure(likeliest(trace, part));
    }

    /** The same of those found. */
    public static boolean isSure(List<LikelyRun> likeliest) {
        int first = likeliest.isEmpty() ? 0 : likeliest.get(0).weight();
        int next = likeliest.size() < 2 ? 0 : likeliest.get(1).weight();
        return first > next && first >= LikelyRun.SURE;
    }

    /** Whether it is the only one, or more speaks for the first than for the next. */
    public static boolean isAhead(List<LikelyRun> likeliest) {
        return likeliest.size() == 1
                || likeliest.size() > 1
                        && likeliest.get(0).weight() > likeliest.get(1).weight();
    }

    /** The trace that has the same bytes, if they were brought in before. */
    public Optional<Entry<Trace>> broughtBefore(String content) {
        return desk
                .view()
                .facts()
                .of(Trace.class)
                .where(trace -> trace.content().equals(content))
                .stream()
                .findFirst();
    }

    /** What a run that is not written yet can be filled with from a part of a trace. */
    public RunToLog toLog(BroughtTrace trace, int part) {
        return RunToLog.of(desk.view(), trace, part);
    }

    /** What a part of a trace would change of a run. */
    public TraceProposal propose(BroughtTrace trace, int part, Entry<Run> run) {
        Facts facts = desk.view().facts();
        Reduction reduction = trace.parts().get(part);
        LocalDateTime begins = part == 0 ? trace.found().recognised().clock() : null;
        Map<TraceField, Object> figures = FiguresOfPart.of(
                reduction,
                run.fact().kind() == RunKind.DYNO,
                begins,
                desk.view().zone(),
                HeatBefore.armed(facts, run));
        List<Problem> problems = problems(facts, trace, part, run);
        List<OverRev> overRevs = overRevs(facts, run, reduction);
        Set<TraceField> taken = TakenUnasked.of(
                run.fact(),
                figures,
                reduction,
                trace.found().defects(),
                part == trace.parts().size() - 1);
        return new TraceProposal(trace, part, run, figures, taken, overRevs, problems);
    }

    /**
     * Writes what is taken, the trace with its marks, its samples where they are kept, and how the file was read; all or
     * nothing, and all in one change. A run that is not in the logbook yet is written with it. Blocks.
     *
     * @param taken which figures become the run's
     * @param why the words for the history
     */
    public Outcome<Written> save(TraceProposal proposal, Set<TraceField> taken, String note, String why) {
        if (proposal.stops()) {
            return Outcome.didNot(
                    proposal.problems().stream().filter(Problem::stops).toList());
        }
        BroughtTrace trace = proposal.trace();
        List<Entry<?>> entries = new ArrayList<>();
        Entry<Run> run = proposal.run();
        boolean fresh = desk.view().facts().of(Run.class).find(run.id()).isEmpty();
        Run next = RunFromTrace.of(run.fact(), proposal.figures(), taken, fresh);
        if (fresh) {
            entries.add(new Entry<>(run.id(), next, run.standing(), run.struckBecause(), run.rev()));
        } else if (!next.equals(run.fact())) {
            entries.add(new Entry<>(run.id(), next, run.standing(), run.struckBecause(), run.rev() + 1));
        }
        Entry<Trace> written = made(trace(proposal, note));
        entries.add(written);
        Reduction part = trace.parts().get(proposal.part());
        for (TraceMark mark : MarksOfPart.of(
                written.id(),
                trace.found().form(),
                part,
                proposal.part(),
                trace.found().defects())) {
            entries.add(made(mark));
        }
        if (taken.contains(TraceField.OVER_REVS)) {
            proposal.overRevs().forEach(overRev -> entries.add(made(overRev)));
        }
        remember(trace.found().form(), trace.name()).ifPresent(entries::add);
        return desk.write(why, entries, trace.kept() == null ? List.of() : List.of(trace.kept()));
    }

    private Trace trace(TraceProposal proposal, String note) {
        BroughtTrace trace = proposal.trace();
        Reduction part = trace.parts().get(proposal.part());
        Map<TraceField, Object> figures = proposal.figures();
        String defects =
                trace.found().defects() == null ? "" : trace.found().defects().text();
        return new Trace(
                proposal.run().id(),
                trace.name(),
                trace.content(),
                trace.samples(),
                trace.size(),
                (Moment) figures.get(TraceField.START),
                new RunningTime(part.lasted() / 1_000),
                Math.toIntExact(Math.min(part.rows(), Integer.MAX_VALUE)),
                trace.found().form().text(),
                trace.settings().text(),
                figures.containsKey(TraceField.RUNNING)
                        ? (RunningTime) figures.get(TraceField.RUNNING)
                        : new RunningTime(0),
                (RunningTime) figures.get(TraceField.LOADED),
                (RunningTime) figures.get(TraceField.HIGH_SPEED),
                (Distance) figures.get(TraceField.DISTANCE),
                (EngineSpeed) figures.get(TraceField.HIGHEST),
                (Temperature) figures.get(TraceField.WATER),
                (Temperature) figures.get(TraceField.OIL_TEMPERATURE),
                (Pressure) figures.get(TraceField.OIL_PRESSURE),
                (Integer) figures.get(TraceField.PULLS),
                part.heat() == null ? null : part.heat().ifArmed(),
                part.heat() == null ? null : part.heat().ifNot(),
                part.heat() == null ? null : HeatBefore.end(part.heat()),
                part.speed() == null ? "" : part.speed().speeds().text(),
                defects,
                trace.kept() == null ? null : trace.kept().sha256(),
                desk.who(),
                note);
    }

    /** How files with these headings were read before, as far as this one is written alike. */
    private Optional<TraceForm> remembered(TraceForm understood) {
        return form(understood.signature())
                .map(entry -> TraceForm.parse(entry.fact().form()))
                .filter(before ->
                        before.columns().size() == understood.columns().size())
                .map(before -> withItsTime(
                        new TraceForm(
                                understood.coding(),
                                before.delimiter(),
                                before.decimal(),
                                before.thousands(),
                                before.comment(),
                                understood.before(),
                                before.time(),
                                before.columns()),
                        understood));
    }

    /** Samples a second are said of one file whose time is wrong: one that has its own time is read by that. */
    private static TraceForm withItsTime(TraceForm before, TraceForm understood) {
        TimeBase own = understood.time();
        boolean said = before.time().kind() == TimeBase.Kind.RATE;
        return said && own.kind() != TimeBase.Kind.RATE && own.known()
                ? before.with(own).with(own.column(), understood.columns().get(own.column()))
                : before;
    }

    private Optional<Entry<LoggerForm>> form(String signature) {
        return desk
                .view()
                .facts()
                .of(LoggerForm.class)
                .where(form -> form.headings().equals(signature))
                .stream()
                .findFirst();
    }

    private Optional<Entry<LoggerForm>> remember(TraceForm form, String file) {
        Entry<LoggerForm> before = form(form.signature()).orElse(null);
        if (before == null) {
            return Optional.of(made(new LoggerForm(file, form.signature(), form.text())));
        }
        LoggerForm now = new LoggerForm(before.fact().name(), form.signature(), form.text());
        return now.equals(before.fact())
                ? Optional.empty()
                : Optional.of(
                        new Entry<>(before.id(), now, before.standing(), before.struckBecause(), before.rev() + 1));
    }

    private static List<Problem> problems(Facts facts, BroughtTrace trace, int part, Entry<Run> run) {
        List<Problem> problems = new ArrayList<>();
        for (Entry<Trace> other : facts.of(Trace.class).inForce().toList()) {
            boolean same = other.fact().content().equals(trace.content())
                    || other.fact().samples().equals(trace.samples());
            // parts of one file may be of several runs
            if (same && (trace.parts().size() == 1 || other.fact().run().equals(run.id()))) {
                Run of = facts.of(Run.class).get(other.fact().run());
                problems.add(Problem.of(
                        ProblemKind.TRACE_BROUGHT_BEFORE, other.fact().name(), of.name(), of.start()));
            } else if (other.fact().run().equals(run.id())) {
                problems.add(Problem.of(
                        ProblemKind.TRACE_OF_RUN_ALREADY,
                        run.fact().name(),
                        other.fact().name()));
            }
        }
        RunsOfTrace.otherCar(facts, trace, run.fact())
                .ifPresent(named -> problems.add(Problem.of(
                        ProblemKind.TRACE_OF_OTHER_CAR,
                        trace.name(),
                        facts.of(Car.class).get(named).name(),
                        facts.of(Car.class)
                                .get(Objects.requireNonNull(run.fact().car()))
                                .name())));
        Reduction reduction = trace.parts().get(part);
        TimeBaseCheck.of(
                        reduction,
                        new RunFigures(run.fact().running(), run.fact().laps(), null),
                        part == trace.parts().size() - 1 ? trace.found().defects() : null)
                .ifPresent(problems::add);
        if (reduction.speed() != null && reduction.coverage() < TakenUnasked.COVERED) {
            problems.add(Problem.of(ProblemKind.TRACE_COVERS_LITTLE, (int) Math.floor(reduction.coverage() * 100)));
        }
        return problems;
    }

    private static List<OverRev> overRevs(Facts facts, Entry<Run> run, Reduction part) {
        List<Excursion> found = part.overRevs() == null ? List.of() : part.overRevs();
        List<Entry<OverRev>> there =
                facts.of(OverRev.class).where(each -> each.run().equals(run.id()));
        List<OverRev> all = new ArrayList<>();
        for (Excursion each : found) {
            EngineSpeed peak = new EngineSpeed((int) Math.round(each.peak()));
            boolean written = there.stream().anyMatch(other -> isAlike(other.fact(), peak));
            if (!written) {
                all.add(new OverRev(
                        run.id(),
                        peak,
                        new RunningTime(each.lasted() / 1_000),
                        each.gear() == null ? "" : Integer.toString(each.gear()),
                        SpeedSource.LOGGER,
                        note(each)));
            }
        }
        return all;
    }

    /** An over-rev somebody read off the same trace: within what a dash shows. */
    private static boolean isAlike(OverRev there, EngineSpeed peak) {
        return Math.abs(there.peak().rpm() - peak.rpm()) <= 25;
    }

    private static String note(Excursion found) {
        return switch (found.how()) {
            case MECHANICAL -> "mechanical, throttle shut";
            case LIMITER -> "on the limiter";
            case NOT_KNOWN -> "";
        };
    }

    private <F extends Fact> Entry<F> made(F fact) {
        return new Entry<>(ids.next(), fact, Standing.IN_FORCE, null, 1);
    }
}
