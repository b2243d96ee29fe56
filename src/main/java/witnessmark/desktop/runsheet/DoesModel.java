package witnessmark.desktop.runsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.beforewego.MarkWords;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.ledger.result.LifeChange;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.RunsOut;
import witnessmark.logbook.run.MarkEffect;
import witnessmark.logbook.run.RunDoes;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.quantity.Counter;
import witnessmark.wording.Amounts;
import witnessmark.wording.LifeWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.StandWords;
import witnessmark.wording.Texts;

/** What a run does, in words and shares, as the right sheet shows it: worst first, and quiet where nothing is near. */
final class DoesModel {
    /** Rows inside their limits are shown only while there are fewer rows than this. */
    static final int ENOUGH = 8;

    /**
     * One mark.
     *
     * @param state how it stands after the run
     * @param title which part and what falls due
     * @param stands how far to the limit or past it, or what else it stands at
     * @param beside what else is to be said; may be empty
     * @param strip what was used before the run and what the run adds, in limits; null where there is no limit
     * @param about the strip in words
     */
    record Row(
            SeamState state,
            String title,
            String stands,
            String beside,
            @Nullable Life strip,
            String about) {}

    private final Texts texts;
    private final Amounts amounts;
    private final LifeWords lives;
    private final RecordWords records;
    private final MarkWords marks;

    DoesModel(RunWords words) {
        this.texts = words.texts();
        this.amounts = new Amounts(texts, words.measures());
        this.lives = new LifeWords(texts, words.measures());
        this.records = words.records();
        this.marks = new MarkWords(texts, words.measures());
    }

    /** The first line: what the engine gains. */
    String engine(RunDoes does) {
        StringBuilder line = new StringBuilder(
                texts.get("runsheet.does.engine", does.engine(), lives.life(does.before()), lives.life(does.after())));
        witnessmark.ledger.result.Life written = does.asWritten();
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
                        all.stream().filter(row -> row.state() != SeamState.WITHIN),
                        all.stream()
                                .filter(row -> row.state() == SeamState.WITHIN)
                                .limit(Math.max(0, ENOUGH - near(all))))
                .toList();
    }

    /** Quietly, what is not shown: limits further away, and parts that have none. */
    List<String> rest(RunDoes does) {
        int hidden = does.marks().size() - rows(does).size();
        if (does.marks().isEmpty() && does.bare().isEmpty()) {
            return List.of(texts.get("runsheet.does.bare", does.engine()));
        }
        List<String> rest = new ArrayList<>();
        if (hidden > 0) {
            rest.add(texts.get("runsheet.does.more", hidden));
        }
        if (!does.bare().isEmpty()) {
            rest.add(texts.get("runsheet.does.no_limit", does.bare().size()));
            int room = Math.max(0, ENOUGH - rows(does).size());
            does.bare().stream().limit(room).map(this::gains).forEach(rest::add);
        }
        return rest;
    }

    /** What a part gains that nothing is held against. */
    private String gains(RunDoes.Bare bare) {
        return texts.get(
                "runsheet.does.gains",
                texts.get("beforewego.part", records.label(records.word(bare.kind())), bare.mark()),
                lives.life(bare.before()),
                lives.life(bare.after()));
    }

    private static long near(List<Row> rows) {
        return rows.stream().filter(row -> row.state() != SeamState.WITHIN).count();
    }

    private List<Row> all(RunDoes does) {
        return does.marks().stream().map(mark -> row(mark, does.event())).toList();
    }

    private Row row(MarkEffect mark, @Nullable Id<Event> inHand) {
        LimitUse before = mark.before();
        LimitUse after = mark.after().use();
        if (before == null || after == null) {
            return new Row(
                    SeamState.of(mark.after().state()),
                    marks.title(mark.after()),
                    stands(mark),
                    mark.change().holds()
                            ? texts.get("runsheet.does.holds")
                            : marks.said(mark.after()).dueWords(),
                    null,
                    "");
        }
        String title = title(mark.after(), after.limit().fact());
        long amount = after.amount();
        long adds = Math.max(0, after.used().highest() - before.used().highest());
        Counter counter = after.used().counter();
        return new Row(
                SeamState.of(mark.after().state()),
                title,
                stands(mark.after(), after),
                beside(mark, before, after, inHand),
                after.used().complete() || after.used().highest() > 0
                        ? Life.of(before.used().highest(), adds, amount)
                        : Life.notKnown(),
                texts.get(
                        "runsheet.does.strip",
                        title,
                        lives.life(before.used()),
                        amounts.amount(counter, amount),
                        amounts.amount(counter, adds)));
    }

    private String title(MarkOn on, Limit limit) {
        if (on.serial() == null) {
            return records.label(limit.name());
        }
        String name = marks.title(on);
        return limit.action() == LimitAction.RENEW
                ? name
                : texts.get("runsheet.does.action", name, records.word(limit.action()));
    }

    /** What a mark without a limit stands at: "9 340 rpm on 3 May", "Leak-down falls due". */
    private String stands(MarkEffect mark) {
        StandWords.Said said = marks.said(mark.after());
        return mark.after().state() == MarkState.HELD ? said.figures() : said.left();
    }

    private String stands(MarkOn on, LimitUse use) {
        return switch (on.state()) {
            case NOT_KNOWN -> lives.life(use.used());
            case RUN_ON -> marks.said(on).left();
            case HELD, OVER, DUE, WITHIN -> lives.limit(use);
        };
    }

    private String beside(MarkEffect mark, LimitUse before, LimitUse after, @Nullable Id<Event> inHand) {
        return switch (mark.after().state()) {
            case HELD, WITHIN -> "";
            case OVER ->
                mark.change().goesOver()
                        ? texts.get("runsheet.does.goes_over")
                        : texts.get("runsheet.does.was", lives.limit(before));
            case RUN_ON -> lives.limit(after);
            case NOT_KNOWN ->
                before.used().runsNotRead() > 0
                        ? texts.get("runsheet.does.not_read")
                        : after.used().runsNotRead() > 0
                                ? texts.get("runsheet.does.not_read_now")
                                : texts.get("runsheet.does.prior_unknown");
            case DUE -> due(after.used().counter(), mark.after().runsOut(), inHand);
        };
    }

    /** By which run of the event in hand it is used up, or at which event, or how little is left after that. */
    private String due(Counter counter, @Nullable RunsOut out, @Nullable Id<Event> inHand) {
        if (out == null) {
            return "";
        }
        if (out.after()) {
            return counter == Counter.AGE || out.leftAfter() <= 0
                    ? texts.get("beforewego.due.after")
                    : texts.get("runsheet.does.due_after", amounts.rough(counter, out.leftAfter()));
        }
        String due = out.planned() != null && out.event().id().equals(inHand)
                ? texts.get("runsheet.does.due", out.planned().fact().name())
                : texts.get("runsheet.does.due_at", out.event().fact().name());
        return out.sure() ? due : texts.get("beforewego.due.perhaps", due);
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
        witnessmark.ledger.result.Life before = change.before();
        return change.after().total() - before.total();
    }
}
