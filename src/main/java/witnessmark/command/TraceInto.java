package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.LikelyRun;
import witnessmark.logbook.tracing.TraceAnswers;
import witnessmark.logbook.tracing.TraceField;
import witnessmark.logbook.tracing.TraceProposal;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.result.TraceSettings;
import witnessmark.wording.TraceWords;

/** The logbook a trace is brought into, of which run it is, and what of it becomes the run's. */
final class TraceInto {
    private static final int NAMED = 3;

    @Option(names = "--logbook", paramLabel = "LOGBOOK", descriptionKey = "command.trace.logbook")
    private @Nullable Path logbook;

    @Option(names = "--run", paramLabel = "RUN", descriptionKey = "command.trace.run")
    private @Nullable String run;

    @Option(names = "--part", paramLabel = "NUMBER", descriptionKey = "command.trace.part")
    private int part = 1;

    @Option(names = "--take", split = ",", paramLabel = "FIGURE", descriptionKey = "command.trace.take")
    private @Nullable List<String> take;

    @Option(names = "--leave", split = ",", paramLabel = "FIGURE", descriptionKey = "command.trace.leave")
    private @Nullable List<String> leave;

    @Option(names = "--no-samples", descriptionKey = "command.trace.samples")
    private boolean noSamples;

    @Option(names = "--note", paramLabel = "TEXT", descriptionKey = "command.trace.note")
    private String note = "";

    @Option(names = "--who", paramLabel = "NAME", descriptionKey = "command.who")
    private @Nullable String who;

    /** Whether a logbook was named. */
    boolean isAsked() {
        return logbook != null;
    }

    /** Whether something was said that is of no use without one. */
    boolean saysMore() {
        return run != null || take != null || leave != null || noSamples || !note.isEmpty() || part != 1;
    }

    /**
     * Brings the file in.
     *
     * @param settings changes those of the engine as it was said
     */
    int bring(Answer answer, LoggerFile file, TraceAnswers said, UnaryOperator<TraceSettings> settings) {
        Tools tools = answer.tools();
        Outcome<Logbook> opened = tools.files().open(java.util.Objects.requireNonNull(logbook));
        if (!opened.didWork()) {
            return answer.didNot(opened.problems());
        }
        try (Logbook book = opened.orThrow()) {
            if (book.readOnly().isPresent()) {
                return answer.didNot(opened.problems());
            }
            answer.problems(opened.problems());
            return bring(Open.desk(answer, book, who), answer, file, said, settings);
        }
    }

    private int bring(
            Desk desk, Answer answer, LoggerFile file, TraceAnswers said, UnaryOperator<TraceSettings> settings) {
        Tools tools = answer.tools();
        BringInTrace bringIn = new BringInTrace(desk, tools.ids());
        Outcome<BroughtTrace> read = read(bringIn, file, said, settings.apply(bringIn.settings(file.name())));
        if (!read.didWork()) {
            return answer.didNot(read.problems());
        }
        BroughtTrace trace = read.orThrow();
        answer.problems(read.problems());
        if (!trace.found().open().isEmpty()) {
            return asked(answer, trace);
        }
        if (part < 1 || part > trace.parts().size()) {
            return answer.refuse(
                    tools.texts().get("command.trace.no_part", trace.parts().size()), Exit.USAGE);
        }
        List<LikelyRun> likeliest = bringIn.likeliest(trace, part - 1);
        List<LikelyRun> named = run == null ? likeliest : named(desk.view().facts(), likeliest, run);
        if (named.isEmpty() && run != null) {
            return answer.didNot(
                    List.of(Problem.of(ProblemKind.NOT_FOUND, tools.texts().get("command.log.run.word"), run)));
        }
        Optional<Entry<Run>> found = run == null ? sure(likeliest) : one(named);
        if (found.isEmpty()) {
            return answer.refuse(which(desk.view().facts(), answer, named), Exit.DID_NOT);
        }
        TraceSettings own = settings.apply(bringIn.settings(found.get().fact().engine()));
        if (!own.equals(trace.settings())) {
            Outcome<BroughtTrace> again = read(bringIn, file, said, own);
            if (!again.didWork()) {
                return answer.didNot(again.problems());
            }
            trace = again.orThrow();
        }
        int saved = save(desk, answer, bringIn.propose(trace, part - 1, found.get()), bringIn);
        return saved == Exit.WORKED && !read.problems().isEmpty() ? Exit.WORKED_EXCEPT : saved;
    }

    private Outcome<BroughtTrace> read(
            BringInTrace bringIn, LoggerFile file, TraceAnswers said, TraceSettings settings) {
        return bringIn.read(file, said, settings, !noSamples, bytes -> true);
    }

    private static int asked(Answer answer, BroughtTrace trace) {
        TraceWords words = new TraceWords(answer.tools().texts(), answer.tools().measures());
        List<String> sentences = new ArrayList<>();
        sentences.add(answer.tools().texts().get("command.trace.asked"));
        trace.found().open().forEach(question -> sentences.add("  " + words.question(question)));
        return answer.refuse(String.join("\n", sentences), Exit.DID_NOT);
    }

    /** Nobody is there to be asked: a run that has a trace already is only meant when it is named. */
    private static Optional<Entry<Run>> sure(List<LikelyRun> likeliest) {
        return BringInTrace.isSure(likeliest) && !likeliest.get(0).hasTrace()
                ? Optional.of(likeliest.get(0).run())
                : Optional.empty();
    }

    /** By its identity, by its name, or by its day, time and car before its name; the likeliest first. */
    private static List<LikelyRun> named(Facts facts, List<LikelyRun> likeliest, String asked) {
        String wanted = asked.strip().toLowerCase(Locale.ROOT);
        return likeliest.stream()
                .filter(each -> wanted.equals(each.run().id().text()) || names(facts, each.run(), wanted))
                .toList();
    }

    private static boolean names(Facts facts, Entry<Run> run, String wanted) {
        String name = run.fact().name().toLowerCase(Locale.ROOT);
        String day = run.fact().start().day().toString();
        String time = time(run);
        String car = car(facts, run);
        return Stream.of(
                        name,
                        day + " " + name,
                        day + " " + car + " " + name,
                        day + " " + time + " " + name,
                        day + " " + time + " " + car + " " + name)
                .anyMatch(wanted::equals);
    }

    /** The only one, or the one that more speaks for than for any other of that name. */
    private static Optional<Entry<Run>> one(List<LikelyRun> named) {
        return BringInTrace.isAhead(named) ? Optional.of(named.get(0).run()) : Optional.empty();
    }

    private static String time(Entry<Run> run) {
        return run.fact()
                .start()
                .wallClock()
                .toLocalTime()
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
    }

    private static String car(Facts facts, Entry<Run> run) {
        return run.fact().car() == null
                ? ""
                : facts.of(Car.class).get(run.fact().car()).name().toLowerCase(Locale.ROOT);
    }

    private static String which(Facts facts, Answer answer, List<LikelyRun> likeliest) {
        List<String> some = likeliest.stream()
                .limit(NAMED)
                .map(each -> Stream.of(
                                each.run().fact().start().day().toString(),
                                time(each.run()),
                                car(facts, each.run()),
                                each.run().fact().name())
                        .filter(word -> !word.isEmpty())
                        .collect(Collectors.joining(" ")))
                .toList();
        return answer.tools()
                .texts()
                .get("command.trace.which", answer.tools().measures().any(some));
    }

    private int save(Desk desk, Answer answer, TraceProposal proposal, BringInTrace bringIn) {
        Tools tools = answer.tools();
        if (proposal.stops()) {
            return answer.didNot(
                    proposal.problems().stream().filter(Problem::stops).toList());
        }
        answer.problems(proposal.problems());
        Set<TraceField> taken = EnumSet.noneOf(TraceField.class);
        taken.addAll(take == null ? proposal.taken() : fields(take, "--take"));
        taken.retainAll(proposal.figures().keySet());
        taken.removeAll(fields(leave == null ? List.of() : leave, "--leave"));
        Run of = proposal.run().fact();
        String file = proposal.trace().name();
        Outcome<Written> written = bringIn.save(
                proposal,
                taken,
                note,
                tools.texts()
                        .get(
                                "command.why.trace",
                                file,
                                of.name(),
                                of.start().day().toString()));
        if (!written.didWork()) {
            return answer.didNot(written.problems());
        }
        if (answer.json()) {
            ObjectNode root = answer.node();
            root.put("run", proposal.run().id().text()).put("name", of.name()).put("part", proposal.part() + 1);
            String car = car(desk.view().facts(), proposal.run());
            root.put("car", car.isEmpty() ? null : car);
            root.put(
                    "engine",
                    desk.view().facts().of(Engine.class).get(of.engine()).number());
            ArrayNode all = root.putArray("taken");
            taken.forEach(field -> all.add(code(field)));
            root.put("samplesKept", proposal.trace().kept() != null);
            answer.print(root);
        } else {
            answer.line(tools.texts()
                    .get(
                            "command.trace.done",
                            file,
                            of.name(),
                            tools.measures().start(of),
                            car(desk.view().facts(), proposal.run()),
                            taken.isEmpty()
                                    ? tools.texts().get("command.trace.nothing")
                                    : tools.measures()
                                            .all(taken.stream()
                                                    .map(TraceInto::code)
                                                    .toList())));
        }
        return proposal.problems().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }

    private static Set<TraceField> fields(List<String> said, String option) {
        Set<TraceField> fields = EnumSet.noneOf(TraceField.class);
        for (String word : said) {
            TraceField found = null;
            for (TraceField field : TraceField.values()) {
                found = code(field).equals(word.strip()) ? field : found;
            }
            if (found == null) {
                List<String> all = EnumSet.allOf(TraceField.class).stream()
                        .map(TraceInto::code)
                        .toList();
                throw new TraceOf.NoSuchWord(word, option, String.join(", ", all));
            }
            fields.add(found);
        }
        return fields;
    }

    /** {@code oil_pressure}, as in the other commands. */
    private static String code(TraceField field) {
        return field.name().toLowerCase(Locale.ROOT);
    }
}
