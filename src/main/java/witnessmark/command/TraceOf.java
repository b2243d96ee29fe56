package witnessmark.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.domain.Coded;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.tracing.ReduceTrace;
import witnessmark.logbook.tracing.TraceAnswers;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.SpeedFound;
import witnessmark.trace.result.TimeBase;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;
import witnessmark.wording.TraceWords;

/** What an engine did by a logger's file, with no logbook; or brings it into one. */
@Command(name = "trace", mixinStandardHelpOptions = true)
final class TraceOf implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "command.trace.file")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path file;

    @Option(names = "--rpm-limit", paramLabel = "RPM", descriptionKey = "command.trace.limit")
    private @Nullable String limit;

    @Option(names = "--channel", paramLabel = "COLUMN=KIND", descriptionKey = "command.trace.channel")
    private Map<String, String> channels = new HashMap<>();

    @Option(names = "--unit", paramLabel = "COLUMN=UNIT", descriptionKey = "command.trace.unit")
    private Map<String, String> units = new HashMap<>();

    @Option(names = "--rate", paramLabel = "PER_SECOND", descriptionKey = "command.trace.rate")
    private @Nullable String rate;

    @Option(names = "--time", paramLabel = "UNIT", descriptionKey = "command.trace.time")
    private @Nullable String time;

    @Option(names = "--decimal", paramLabel = "MARK", descriptionKey = "command.trace.decimal")
    private @Nullable String decimal;

    @Option(names = "--month-first", descriptionKey = "command.trace.monthFirst")
    private boolean monthFirst;

    @Option(names = "--entry", paramLabel = "NAME", descriptionKey = "command.trace.entry")
    private @Nullable String entry;

    @Option(names = "--set", paramLabel = "SETTING=FIGURE", descriptionKey = "command.trace.set")
    private Map<String, String> settings = new HashMap<>();

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    @Mixin
    private TraceInto into = new TraceInto();

    private final Tools tools;

    TraceOf(Tools tools) {
        this.tools = tools;
    }

    /** A word on the command line that is none of its list. */
    static final class NoSuchWord extends RuntimeException {
        private final transient Object[] facts;

        NoSuchWord(Object... facts) {
            super(null, null, false, false);
            this.facts = facts;
        }
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "trace", json);
        if (!Files.isRegularFile(file)) {
            return answer.didNot(List.of(Problem.of(ProblemKind.NO_SUCH_FILE, file.toString())));
        }
        if (!into.isAsked() && into.saysMore()) {
            return answer.refuse(tools.texts().get("command.trace.no_logbook"), Exit.USAGE);
        }
        Outcome<ReduceTrace.Found> outcome;
        try {
            if (into.isAsked()) {
                return into.bring(answer, new OnDisk(file), answers(), this::said);
            }
            outcome = ReduceTrace.of(this::open, answers(), said(TraceSettings.usual()), bytes -> true);
        } catch (NoSuchWord e) {
            return answer.refuse(tools.texts().get("command.trace.word", e.facts), Exit.USAGE);
        }
        if (!outcome.didWork()) {
            return answer.didNot(outcome.problems());
        }
        ReduceTrace.Found found = outcome.orThrow();
        answer.problems(outcome.problems());
        if (json) {
            answer.print(new TraceJson(new TraceWords(tools.texts(), tools.measures())).of(answer.node(), found));
        } else {
            print(answer, found);
        }
        if (found.read() == null) {
            return Exit.DID_NOT;
        }
        return found.open().isEmpty() && outcome.problems().isEmpty() ? Exit.WORKED : Exit.WORKED_EXCEPT;
    }

    private java.io.InputStream open() throws IOException {
        return Files.newInputStream(file);
    }

    private TraceAnswers answers() {
        Map<String, ChannelKind> kinds = new HashMap<>();
        channels.forEach((column, kind) -> kinds.put(column, word("--channel", ChannelKind.class, kind)));
        Map<String, ChannelUnit> said = new HashMap<>();
        units.forEach((column, unit) -> said.put(column, word("--unit", ChannelUnit.class, unit)));
        Character mark = decimal == null
                ? null
                : switch (decimal) {
                    case "point", "." -> '.';
                    case "comma", "," -> ',';
                    default -> throw new NoSuchWord(decimal, "--decimal", "point, comma");
                };
        Double perSecond = rate == null ? null : figure("--rate", rate, 1e-3, TimeBase.FASTEST);
        return new TraceAnswers(
                entry,
                perSecond,
                time == null ? null : word("--time", TimeBase.Kind.class, time),
                mark,
                monthFirst ? Boolean.FALSE : null,
                kinds,
                said);
    }

    private record OnDisk(Path path) implements LoggerFile {
        @Override
        public String name() {
            return String.valueOf(path.getFileName());
        }

        @Override
        public long size() throws IOException {
            return Files.size(path);
        }

        @Override
        public java.io.InputStream open() throws IOException {
            return Files.newInputStream(path);
        }
    }

    private TraceSettings said(TraceSettings before) {
        TraceSettings all = before;
        for (Map.Entry<String, String> each : settings.entrySet()) {
            TraceSetting setting = word("--set", TraceSetting.class, each.getKey());
            all = all.with(setting, figure(setting.code(), each.getValue(), setting.least(), setting.most()));
        }
        if (limit != null) {
            TraceSetting setting = TraceSetting.OVER_REV_ABOVE;
            all = all.with(setting, figure("--rpm-limit", limit, setting.least(), setting.most()));
        }
        return all;
    }

    private static <E extends Enum<E> & Coded> E word(String option, Class<E> list, String text) {
        try {
            return Coded.of(list, text);
        } catch (IllegalArgumentException e) {
            throw new NoSuchWord(text, option, String.valueOf(e.getMessage()));
        }
    }

    private static double figure(String option, String text, double least, double most) {
        Function<Double, String> plain =
                figure -> new java.math.BigDecimal(figure).stripTrailingZeros().toPlainString();
        try {
            double figure = Double.parseDouble(text);
            if (figure >= least && figure <= most) {
                return figure;
            }
        } catch (NumberFormatException e) {
            throw new NoSuchWord(text, option, plain.apply(least) + "\u2026" + plain.apply(most));
        }
        throw new NoSuchWord(text, option, plain.apply(least) + "\u2026" + plain.apply(most));
    }

    private void print(Answer answer, ReduceTrace.Found found) {
        TraceWords words = new TraceWords(tools.texts(), tools.measures());
        List<Question> told = found.recognised().questions().stream()
                .filter(question -> !question.kind().stops())
                .toList();
        told.forEach(question -> tools.err().println(words.question(question)));
        if (!found.open().isEmpty()) {
            tools.err().println(tools.texts().get(found.read() == null ? "command.trace.asked" : "command.trace.late"));
            found.open().forEach(question -> tools.err().println("  " + words.question(question)));
        }
        words.columns(found.form().columns()).forEach(answer::line);
        if (found.parts().size() > 1) {
            answer.line(tools.texts().get("trace.parts", found.parts().size()));
        }
        for (int i = 0; i < found.parts().size(); i++) {
            answer.line("");
            if (found.parts().size() > 1) {
                answer.line(tools.texts().get("trace.part", i + 1));
            }
            part(answer, words, found.parts().get(i));
        }
        if (found.defects() != null && !found.defects().times().isEmpty()) {
            answer.line("");
            answer.line(tools.texts().get("trace.wrong"));
            words.defects(found.defects()).forEach(answer::line);
        }
        if (found.read() != null) {
            answer.line("");
            answer.line(tools.texts().get("trace.proposal"));
        }
    }

    private void part(Answer answer, TraceWords words, Reduction part) {
        words.lines(part).forEach(answer::line);
        SpeedFound speed = part.speed();
        if (speed != null && speed.running() > 0) {
            answer.line(tools.texts().get("trace.bands"));
            words.speeds(speed.speeds()).forEach(answer::line);
        }
    }
}
