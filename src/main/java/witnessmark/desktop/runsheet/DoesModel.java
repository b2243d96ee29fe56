package witnessmark.desktop.runsheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.LimitAction;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LifeChange;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.run.Due;
import witnessmark.logbook.run.LimitEffect;
import witnessmark.logbook.run.RunDoes;
import witnessmark.quantity.Counter;
import witnessmark.wording.Amounts;
import witnessmark.wording.LifeWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** What a run does, in words and shares, as the right sheet shows it: worst first, and quiet where nothing is near. */
final class DoesModel {
    /** Rows inside their limits are shown only while there are fewer rows than this. */
    static final int ENOUGH = 8;

    /** How a limit stands once the run is in. */
    enum State {
        OVER,
        DUE,
        NOT_KNOWN,
        WITHIN
    }

    /**
     * One limit.
     *
     * @param state how it stands after the run
     * @param title which part and what falls due
     * @param stands how far to the limit or past it
     * @param beside what else is to be said; may be empty
     * @param ran used before the run, in limits
     * @param adds what the run adds, in limits
     * @param about the strip in words
     */
    record Row(State state, String title, String stands, String beside, double ran, double adds, String about) {}

    private final Texts texts;
    private final Amounts amounts;
    private final LifeWords lives;
    private final RecordWords records;

    DoesModel(RunWords words) {
        this.texts = words.texts();
        this.amounts = new Amounts(texts, words.measures());
        this.lives = new LifeWords(texts, words.measures());
        this.records = words.records();
    }

    /** The first line: what the engine gains. */
    String engine(RunDoes does) {
        StringBuilder line = new StringBuilder(
                texts.get("runsheet.does.engine", does.engine(), lives.life(does.before()), lives.life(does.after())));
        Life written = does.asWritten();
        if (written != null && !written.equals(does.after())) {
            line.append(' ').append(texts.get("runsheet.does.as_written", lives.life(written)));
        }
        counted(does, Counter.HEAT_CYCLES)
                .ifPresent(cycles -> line.append(' ')
                        .append(texts.get("runsheet.does.counts", amounts.amount(Counter.HEAT_CYCLES, cycles))));
        counted(does, Counter.RACE_STARTS)
                .ifPresent(starts -> line.append(' ')
                        .append(texts.get("runsheet.does.counts", amounts.amount(Counter.RACE_STARTS, starts))));
        return line.toString();
    }

    /** The rows to show, worst first; those inside their limits only as far as there is room. */
    List<Row> rows(RunDoes does) {
        List<Row> all = all(does);
        return Stream.concat(
                        all.stream().filter(row -> row.state() != State.WITHIN),
                        all.stream().filter(row -> row.state() == State.WITHIN).limit(Math.max(0, ENOUGH - near(all))))
                .toList();
    }

    /** Quietly, what is not shown: limits further away, and parts that have none. */
    List<String> rest(RunDoes does) {
        long hidden = does.limits().size() - rows(does).size();
        if (does.limits().isEmpty() && does.withoutLimit() == 0) {
            return List.of(texts.get("runsheet.does.bare", does.engine()));
        }
        return Stream.of(
                        hidden > 0 ? Optional.of(texts.get("runsheet.does.more", hidden)) : Optional.<String>empty(),
                        does.withoutLimit() > 0
                                ? Optional.of(texts.get("runsheet.does.no_limit", does.withoutLimit()))
                                : Optional.<String>empty())
                .flatMap(Optional::stream)
                .toList();
    }

    private static long near(List<Row> rows) {
        return rows.stream().filter(row -> row.state() != State.WITHIN).count();
    }

    private List<Row> all(RunDoes does) {
        return does.limits().stream()
                .map(this::row)
                .sorted(Comparator.comparing(row -> row.state() == State.WITHIN ? 2 : row.state() == State.DUE ? 1 : 0))
                .toList();
    }

    private Row row(LimitEffect limit) {
        LimitUse before = limit.effect().before();
        LimitUse after = limit.effect().after();
        long amount = after.amount();
        State state = state(limit);
        double ran = (double) before.used().highest() / amount;
        double adds =
                Math.max(0, (double) (after.used().highest() - before.used().highest()) / amount);
        String title = title(limit);
        return new Row(
                state,
                title,
                stands(after, state),
                beside(limit, state),
                ran,
                adds,
                texts.get(
                        "runsheet.does.strip",
                        title,
                        lives.life(before.used()),
                        amounts.amount(counter(after), amount),
                        amounts.amount(
                                counter(after),
                                Math.max(
                                        0,
                                        after.used().highest() - before.used().highest()))));
    }

    private static State state(LimitEffect limit) {
        return switch (limit.effect().after().state()) {
            case HELD, OVER, RUN_ON -> State.OVER;
            case NOT_KNOWN -> State.NOT_KNOWN;
            case DUE, WITHIN -> limit.due() != null ? State.DUE : State.WITHIN;
        };
    }

    private String title(LimitEffect limit) {
        String mark = limit.mark();
        PartKind kind = limit.kind();
        String name = mark == null || kind == null
                ? records.label(limit.effect().after().limit().fact().name())
                : texts.get("runsheet.does.part", records.label(records.word(kind)), mark);
        boolean look = mark != null && limit.effect().after().limit().fact().action() == LimitAction.LOOK;
        return look ? texts.get("runsheet.does.look", name) : name;
    }

    private String stands(LimitUse use, State state) {
        return switch (state) {
            case NOT_KNOWN -> lives.life(use.used());
            case OVER, DUE, WITHIN -> lives.limit(use);
        };
    }

    private String beside(LimitEffect limit, State state) {
        LimitUse before = limit.effect().before();
        @Nullable Due due = limit.due();
        return switch (state) {
            case OVER ->
                before.state() == MarkState.OVER
                        ? texts.get("runsheet.does.was", lives.limit(before))
                        : texts.get("runsheet.does.goes_over");
            case NOT_KNOWN ->
                before.used().runsNotRead() > 0
                        ? texts.get("runsheet.does.not_read")
                        : limit.effect().after().used().runsNotRead() > 0
                                ? texts.get("runsheet.does.not_read_now")
                                : texts.get("runsheet.does.prior_unknown");
            case DUE -> due == null ? "" : due(due);
            case WITHIN -> "";
        };
    }

    private String due(Due due) {
        String event = due.event();
        return event == null ? texts.get("runsheet.does.due", due.run()) : texts.get("runsheet.does.due_at", event);
    }

    private static Counter counter(LimitUse use) {
        return use.limit().fact().counter();
    }

    /** What the run adds to a counter of the engine, when it says. */
    private static Optional<Long> counted(RunDoes does, Counter counter) {
        return does.counted().stream()
                .filter(change -> change.after().counter() == counter)
                .map(DoesModel::added)
                .filter(added -> added > 0)
                .findFirst();
    }

    private static long added(LifeChange change) {
        Life before = change.before();
        return change.after().total() - before.total();
    }
}
