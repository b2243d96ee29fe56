package witnessmark.desktop.traces;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.logbook.tracing.BroughtBefore;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.LikelyRun;
import witnessmark.logbook.tracing.TraceAnswers;
import witnessmark.logbook.tracing.TraceField;
import witnessmark.logbook.tracing.TraceProposal;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.TimeBase;
import witnessmark.trace.result.TraceSettings;

/**
 * A file of a logger in hand, without a widget: what was answered of it, what it came to, of which run each of its parts is,
 * and what is taken of it. One thread only.
 */
public final class TraceModel {
    private final String file;
    private final List<Question> asked = new ArrayList<>();
    private final Map<Question, Object> said = new HashMap<>();
    private final Map<Integer, PartInHand> parts = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private TraceAnswers answers = TraceAnswers.none();
    private TraceSettings settings;
    private @Nullable BroughtTrace trace;
    private @Nullable Id<Run> wanted;
    private boolean keep = true;
    private int part;

    /**
     * What was read of a file, with what the logbook says of each of its parts; made off the event thread.
     *
     * @param trace or why there is none
     * @param runs of which run each part may be, the likeliest first
     * @param before what became of each part when it was brought in before
     */
    public record Read(Outcome<BroughtTrace> trace, List<List<LikelyRun>> runs, List<Optional<BroughtBefore>> before) {
        /** Asks for it; blocks. */
        static Read of(BringInTrace bringIn, Desk book, Outcome<BroughtTrace> trace) {
            List<List<LikelyRun>> runs = new ArrayList<>();
            List<Optional<BroughtBefore>> before = new ArrayList<>();
            if (trace.didWork()) {
                BroughtTrace found = trace.orThrow();
                for (int i = 0; i < found.parts().size(); i++) {
                    runs.add(bringIn.likeliest(found, i));
                    before.add(BroughtBefore.of(book, found, i));
                }
            }
            return new Read(trace, runs, before);
        }
    }

    /** One part of the file. */
    private static final class PartInHand {
        private List<LikelyRun> runs = List.of();
        private @Nullable BroughtBefore before;
        private @Nullable TraceProposal proposal;
        private final Set<TraceField> taken = EnumSet.noneOf(TraceField.class);
        private String note = "";
        private boolean chosen;
        private boolean done;
    }

    /**
     * @param file its name
     * @param settings by which it is worked out
     * @param wanted the run it is brought in for, or null for the likeliest
     */
    public TraceModel(String file, TraceSettings settings, @Nullable Id<Run> wanted) {
        this.file = file;
        this.settings = settings;
        this.wanted = wanted;
    }

    public String file() {
        return file;
    }

    /** It was read no further: nothing is known of it; what was answered stands. */
    void unread() {
        trace = null;
        problems.clear();
    }

    /** It is brought in for this run; what was answered of the file stands. */
    void want(Id<Run> run) {
        wanted = run;
        part = 0;
        inHand().chosen = false;
        inHand().proposal = null;
    }

    TraceAnswers answers() {
        return answers;
    }

    TraceSettings settings() {
        return settings;
    }

    /** What was read; empty while it is not, or could not be. */
    Optional<BroughtTrace> trace() {
        return Optional.ofNullable(trace);
    }

    /** Whether figures were worked out of it. */
    boolean isRead() {
        return trace != null && !trace.parts().isEmpty();
    }

    /** Why it could not be read; what is to be known before anything of it is taken, where it could. */
    List<Problem> problems() {
        return List.copyOf(problems);
    }

    // Reading

    /**
     * Takes what was read.
     *
     * @return whether it is to be read again, by the figures of the engine it turned out to be of
     */
    boolean take(Read read, BringInTrace bringIn) {
        problems.clear();
        problems.addAll(read.trace().problems());
        if (!read.trace().didWork()) {
            trace = null;
            severalTexts().ifPresent(this::ask);
            return false;
        }
        BroughtTrace now = read.trace().orThrow();
        trace = now;
        now.found().recognised().questions().forEach(this::ask);
        now.found().open().forEach(this::ask);
        for (int i = 0; i < now.parts().size(); i++) {
            PartInHand each = parts.computeIfAbsent(i, number -> new PartInHand());
            each.runs = read.runs().get(i);
            each.before = read.before().get(i).orElse(null);
            choose(each, i, runFor(each, i), bringIn, true);
        }
        part = Math.min(part, Math.max(0, now.parts().size() - 1));
        return isOfAnotherEngine(bringIn);
    }

    /** The run it was brought in for before, else the one that was picked, else the one it was called for, else the likeliest when that is sure. */
    private Optional<Entry<Run>> runFor(PartInHand each, int number) {
        if (each.before != null) {
            return Optional.of(each.before.run());
        }
        TraceProposal before = each.proposal;
        Id<Run> id = each.chosen && before != null ? before.run().id() : number == 0 ? wanted : null;
        if (each.chosen && before == null) {
            return Optional.empty();
        }
        return each.runs.stream()
                .map(LikelyRun::run)
                .filter(run -> run.id().equals(id))
                .findFirst()
                .or(() -> BringInTrace.isSure(each.runs)
                        ? Optional.of(each.runs.get(0).run())
                        : Optional.empty());
    }

    private boolean isOfAnotherEngine(BringInTrace bringIn) {
        TraceProposal now = inHand().proposal;
        if (now == null) {
            return false;
        }
        TraceSettings own = bringIn.settings(now.run().fact().engine());
        boolean other = !own.equals(settings);
        settings = own;
        return other;
    }

    private void ask(Question question) {
        boolean known =
                asked.stream().anyMatch(each -> each.kind() == question.kind() && each.column() == question.column());
        if (!known && (question.kind().stops() || question.kind() == Question.Kind.DAY_OR_MONTH)) {
            asked.add(question);
        }
    }

    private Optional<Question> severalTexts() {
        return problems.stream()
                .filter(problem -> problem.kind() == ProblemKind.PACKED_SEVERAL)
                .findFirst()
                .map(problem -> (List<?>) problem.facts().get(0))
                .map(names -> Question.of(Question.Kind.WHICH_TEXT, -1, names.size(), names));
    }

    // Questions

    /** Everything that was asked of this file, answered or not, in the order it was asked. */
    List<Question> asked() {
        return List.copyOf(asked);
    }

    /** What was answered, or taken where that is not open; empty while nothing was. */
    Optional<Object> answer(Question question) {
        BroughtTrace now = trace;
        return now != null && question.kind() == Question.Kind.DAY_OR_MONTH
                ? Optional.of(now.found().form().time().dayFirst())
                : Optional.ofNullable(said.get(question));
    }

    /** Whether a question is not answered yet, so that nothing can be brought in. */
    boolean isOpen(Question question) {
        BroughtTrace now = trace;
        if (now == null) {
            return !said.containsKey(question);
        }
        return now.found().open().stream()
                .anyMatch(open -> open.kind() == question.kind() && open.column() == question.column());
    }

    boolean isAsking() {
        return asked.stream().anyMatch(this::isOpen);
    }

    /** What is told and needs no answer: a clock that was not set. */
    List<Question> told() {
        BroughtTrace now = trace;
        return now == null
                ? List.of()
                : now.found().recognised().questions().stream()
                        .filter(question -> !question.kind().stops() && question.kind() != Question.Kind.DAY_OR_MONTH)
                        .toList();
    }

    /** What may be answered; empty where a number is typed. */
    List<Object> choices(Question question) {
        return switch (question.kind()) {
            case TIME_UNIT -> List.copyOf((List<?>) question.facts().get(2));
            case RATE_SAYS_OTHERWISE ->
                List.of(question.facts().get(1), question.facts().get(2));
            case DECIMAL_MARK -> List.of('.', ',');
            case DAY_OR_MONTH -> List.of(Boolean.TRUE, Boolean.FALSE);
            case UNIT -> List.copyOf(((ChannelKind) question.facts().get(1)).units());
            case WHICH_CHANNEL, WHICH_TEXT ->
                List.copyOf((List<?>) question.facts().get(1));
            default -> List.of();
        };
    }

    /**
     * Somebody answered; the file is to be read again.
     *
     * @param answer one of the {@link #choices}, or samples a second as a number
     */
    void answer(Question question, Object answer) {
        said.put(question, answer);
        answers = switch (question.kind()) {
            case SAMPLE_RATE -> answers.rate((Double) answer);
            case TIME_UNIT -> answers.time((TimeBase.Kind) answer);
            case RATE_SAYS_OTHERWISE ->
                answer.equals(question.facts().get(1))
                        ? answers.time(Objects.requireNonNull(trace)
                                .found()
                                .form()
                                .time()
                                .kind())
                        : answers.rate((Double) answer);
            case DECIMAL_MARK -> answers.decimal((Character) answer);
            case DAY_OR_MONTH -> answers.dayFirst((Boolean) answer);
            case UNIT -> answers.unit(heading(question), (ChannelUnit) answer);
            case WHICH_CHANNEL ->
                answers.channel((String) answer, (ChannelKind) question.facts().get(0));
            case WHICH_TEXT -> {
                asked.removeIf(other -> other.kind() != Question.Kind.WHICH_TEXT);
                yield TraceAnswers.none().entry((String) answer);
            }
            default -> answers;
        };
    }

    private String heading(Question question) {
        return (String) question.facts().get(0);
    }

    /** Somebody says what a column is. */
    void channel(ColumnForm column, ChannelKind kind) {
        answers = answers.channel(column.heading(), kind);
    }

    /** Somebody says what a column is in. */
    void unit(ColumnForm column, ChannelUnit unit) {
        answers = answers.unit(column.heading(), unit);
    }

    /** Somebody says in which unit the time is written. */
    void time(TimeBase.Kind unit) {
        answers = answers.time(unit);
    }

    /** Somebody says how many samples there are a second, whatever a column says. */
    void rate(double perSecond) {
        answers = answers.rate(perSecond);
    }

    // Parts and runs

    int part() {
        return part;
    }

    void part(int now) {
        part = now;
    }

    /** Whether a part is in the logbook already. */
    boolean isDone(int number) {
        PartInHand each = parts.get(number);
        return each != null && each.done;
    }

    /** What became of the part in hand when it was brought in before this page; then nothing of it is taken again. */
    Optional<BroughtBefore> before() {
        return inHand().done ? Optional.empty() : Optional.ofNullable(inHand().before);
    }

    /** Whether the part in hand can go with a run that nobody logged yet. */
    boolean canLog() {
        return isRead() && !isAsking() && !inHand().done && inHand().before == null;
    }

    private PartInHand inHand() {
        return parts.computeIfAbsent(part, number -> new PartInHand());
    }

    /** Of which run the part in hand may be, the likeliest first. */
    List<LikelyRun> runs() {
        return inHand().runs;
    }

    /** The run in hand, with what speaks for it. */
    Optional<LikelyRun> run() {
        TraceProposal now = inHand().proposal;
        return now == null
                ? Optional.empty()
                : inHand().runs.stream()
                        .filter(each -> each.run().id().equals(now.run().id()))
                        .findFirst();
    }

    /**
     * Somebody picks a run, or none.
     *
     * @return whether the file is to be read again, by the figures of its engine
     */
    boolean choose(@Nullable Id<Run> id, BringInTrace bringIn) {
        PartInHand each = inHand();
        each.chosen = true;
        wanted = part == 0 ? id : wanted;
        choose(
                each,
                part,
                each.runs.stream()
                        .map(LikelyRun::run)
                        .filter(run -> run.id().equals(id))
                        .findFirst(),
                bringIn,
                false);
        return isOfAnotherEngine(bringIn);
    }

    private void choose(
            PartInHand each, int number, Optional<Entry<Run>> run, BringInTrace bringIn, boolean keepsTicks) {
        TraceProposal before = each.proposal;
        TraceProposal now = run.map(of -> bringIn.propose(Objects.requireNonNull(trace), number, of))
                .orElse(null);
        each.proposal = now;
        if (now == null) {
            each.taken.clear();
        } else if (before == null
                || !keepsTicks
                || !before.run().id().equals(now.run().id())) {
            each.taken.clear();
            each.taken.addAll(now.taken());
        } else {
            Set<TraceField> fresh = EnumSet.noneOf(TraceField.class);
            fresh.addAll(now.taken());
            fresh.removeAll(before.figures().keySet());
            each.taken.retainAll(now.figures().keySet());
            each.taken.addAll(fresh);
        }
    }

    /** The logbook changed: the run in hand may say something else now, or be gone. */
    void look(BringInTrace bringIn, Read read) {
        for (int i = 0; i < read.runs().size() && trace != null; i++) {
            PartInHand each = parts.computeIfAbsent(i, number -> new PartInHand());
            each.runs = read.runs().get(i);
            each.before = read.before().get(i).orElse(null);
            if (!each.done) {
                choose(each, i, runFor(each, i), bringIn, true);
            }
        }
    }

    // What is taken

    /** What the trace would change of the run in hand. */
    Optional<TraceProposal> proposal() {
        return Optional.ofNullable(inHand().proposal);
    }

    Set<TraceField> taken() {
        Set<TraceField> taken = EnumSet.noneOf(TraceField.class);
        taken.addAll(inHand().taken);
        return taken;
    }

    void tick(TraceField field, boolean take) {
        if (take) {
            inHand().taken.add(field);
        } else {
            inHand().taken.remove(field);
        }
    }

    /** Whether its samples are kept in the logbook. */
    boolean keeps() {
        return keep;
    }

    void keep(boolean yes) {
        keep = yes;
    }

    String note() {
        return inHand().note;
    }

    void note(String typed) {
        inHand().note = typed;
    }

    /** What is to be written now; empty while a question is open, no run is picked, or it is refused. */
    Optional<TraceProposal> toSave() {
        TraceProposal now = inHand().proposal;
        if (now == null || now.stops() || !canLog()) {
            return Optional.empty();
        }
        return Optional.of(
                keep
                        ? now
                        : new TraceProposal(
                                now.trace().withoutSamples(),
                                now.part(),
                                now.run(),
                                now.figures(),
                                now.taken(),
                                now.overRevs(),
                                now.problems()));
    }

    /**
     * A part is in the logbook.
     *
     * @return whether another part is not yet
     */
    boolean saved(int number) {
        parts.computeIfAbsent(number, each -> new PartInHand()).done = true;
        OptionalInt left = left();
        left.ifPresent(next -> part = next);
        return left.isPresent();
    }

    /** Whether it was read and every part of it is in the logbook. */
    boolean isAllIn() {
        return trace != null && left().isEmpty();
    }

    private OptionalInt left() {
        int all = trace == null ? 0 : trace.parts().size();
        return IntStream.range(0, all).filter(each -> !isDone(each)).findFirst();
    }
}
