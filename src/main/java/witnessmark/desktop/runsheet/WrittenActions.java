package witnessmark.desktop.runsheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.KeptDraft;
import witnessmark.desktop.form.Refusal;
import witnessmark.desktop.history.HistoryLine;
import witnessmark.desktop.history.HistoryModel;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.logbook.DecideSameRun;
import witnessmark.logbook.Desk;
import witnessmark.logbook.StrikeOut;
import witnessmark.logbook.engines.Amended;
import witnessmark.logbook.engines.SeeHistory;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.run.CorrectRun;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.WrittenRun;
import witnessmark.outcome.Outcome;
import witnessmark.wording.Texts;

/** What can be done with one written run: correcting it, taking it out, putting it back, settling whose it is. */
final class WrittenActions {
    private static final Logger LOG = LoggerFactory.getLogger(WrittenActions.class);

    private final RunContext context;
    private final Texts texts;
    private final Desk book;
    private final CorrectRun correct;
    private final RunSheetModel model;
    private final RunWords words;
    private final UndoActions undo;
    private final HistoryModel historyWords;
    private final KeptDraft draft;
    private final LiveForecast forecast;
    private final WhyCorrected why = new WhyCorrected();
    private final Latest opening;
    private final List<Runnable> listeners = new ArrayList<>();
    private WrittenRun run;
    private SheetView view = SheetView.NOBODY;
    private List<Amended> history = List.of();
    private String by = "";
    private String changedBy = "";
    private final Refusal failure = new Refusal();
    private boolean meanwhile;
    private boolean begun;
    private boolean working;

    /** @param run the run as it was opened, on the model */
    WrittenActions(
            RunContext context,
            CorrectRun correct,
            WrittenRun run,
            RunSheetModel model,
            RunWords words,
            UndoActions undo) {
        this.context = context;
        this.texts = context.texts();
        this.book = context.book();
        this.correct = correct;
        this.run = run;
        this.model = model;
        this.words = words;
        this.undo = undo;
        this.historyWords = new HistoryModel(texts, context.measures());
        this.draft = new KeptDraft(
                book,
                context.tasks(),
                texts,
                RunSheetActions.FORM,
                run.entry().id().text(),
                () -> model.isDirty() || !why.text().isEmpty(),
                () -> why.into(model.draft(view.focused().orElse(null))),
                this::tell);
        this.opening = new Latest(context.tasks());
        model.onChange(this::modelChanged);
        this.forecast = LiveForecast.of(context.tasks(), texts, model);
    }

    void seenBy(SheetView seen) {
        view = seen;
    }

    /** Told when anything that is said about the run has changed. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    // What is to be said

    /** The run as it was written when last looked at. */
    Entry<Run> entry() {
        return run.entry();
    }

    /** What the run is called. */
    String named() {
        return words.named(entry().fact(), book.view().facts());
    }

    /** Who wrote it; empty until that is read. */
    String by() {
        return by;
    }

    /** What became of what is typed; who changed the run last while nothing is. */
    String draftLine() {
        return draft.line().isEmpty() ? changedBy : draft.line();
    }

    /** How the run came to stand as it does, the latest change first; empty until that is read. */
    List<HistoryLine> history() {
        return historyWords.lines(entry(), history, book.view().zone());
    }

    /** Why the last thing asked for did not work; empty when it did. */
    String failure() {
        return failure.said();
    }

    /** Who changed the run while somebody was typing here; empty when nobody did. */
    Optional<String> changedMeanwhile() {
        return meanwhile && !history.isEmpty() ? Optional.of(history.get(0).who()) : Optional.empty();
    }

    /** Why it is corrected, as typed. */
    WhyCorrected why() {
        return why;
    }

    boolean isStruckOut() {
        return entry().standing() == Standing.STRUCK_OUT;
    }

    /** The day looked at. */
    LocalDate day() {
        return book.view().day();
    }

    /** Whether an earlier day is looked at, when nothing can be changed. */
    boolean isEarlierDay() {
        return book.view().readOnly();
    }

    boolean canCorrect() {
        return !isStruckOut() && !isEarlierDay();
    }

    /** Which run this may be again, as long as nobody has settled it. */
    Optional<String> perhapsSame() {
        return Optional.ofNullable(entry().fact().perhapsSame())
                .filter(other -> entry().inForce())
                .flatMap(other -> book.view().facts().of(Run.class).find(other))
                .map(other -> texts.get(
                        "runsheet.written.perhaps_same",
                        words.named(other.fact(), book.view().facts()),
                        words.measures().start(other.fact())));
    }

    // What a person does

    /** Says why it is corrected, for its history. */
    void because(String typed) {
        if (why.type(typed)) {
            draft.typed();
        }
    }

    /** Looks again at what is written; what was typed stays. */
    void refresh() {
        if (!begun) {
            begun = true;
            forecast.look();
            look(true);
        } else if (run.isOutdated()) {
            follow(false);
        }
        tell();
    }

    /** The focus left a field. */
    void left() {
        draft.now();
    }

    /** Writes what was corrected. */
    void save() {
        if (working || !canCorrect()) {
            return;
        }
        failure.none();
        boolean can = model.ask();
        if (!model.isDirty()) {
            context.window().say(texts.get("runsheet.written.nothing"));
            tell();
        } else if (can) {
            write();
        } else {
            model.stopped().stream().findFirst().ifPresent(view::focus);
            tell();
        }
    }

    private void write() {
        working = true;
        draft.hold();
        WrittenRun before = run;
        Map<RunField, String> fields = model.texts();
        String named = named();
        String because = why.typed();
        String said = why.text().isEmpty()
                ? texts.get("runsheet.written.why", named)
                : texts.get("runsheet.written.why.because", named, why.text());
        context.tasks()
                .write(
                        texts.get("runsheet.saving"),
                        () -> {
                            Outcome<Optional<Written>> outcome = before.save(fields, said);
                            if (outcome.didWork()) {
                                draft.discardHere();
                            }
                            return outcome;
                        },
                        outcome -> saved(fields, because, named, outcome),
                        this::couldNot);
    }

    private void saved(Map<RunField, String> fields, String because, String named, Outcome<Optional<Written>> outcome) {
        working = false;
        if (!outcome.didWork()) {
            said(outcome);
            draft.typed();
            refresh();
            return;
        }
        meanwhile = false;
        why.written(because);
        correct.open(entry().id()).ifPresent(now -> {
            run = now;
            model.corrected(fields, now);
            view.written();
        });
        draft.gone();
        draft.typed();
        look(false);
        outcome.orThrow().ifPresent(written -> done("runsheet.written.saved", named, written));
        tell();
    }

    /** Puts back what is written; it can be taken back once. */
    void putBack() {
        if (!model.isDirty() && why.text().isEmpty() || !canCorrect()) {
            return;
        }
        meanwhile = false;
        failure.none();
        why.clear();
        model.asWritten();
        draft.discard();
        view.focus(RunField.RUNNING);
        context.window()
                .say(
                        texts.get("runsheet.written.put_back"),
                        Caption.of(texts.get("runsheet.undo.word")),
                        this::notPutBack);
    }

    /** Puts back what had been typed. */
    void notPutBack() {
        if (model.canPutBack()) {
            why.putBack();
            model.putBack();
            draft.typed();
            context.window().say(texts.get("runsheet.written.not_put_back"));
        }
    }

    /** Takes the run out of every figure. */
    void strikeOut(String because) {
        change(
                "runsheet.written.striking",
                "runsheet.written.struck_now",
                (entry, why) -> new StrikeOut(book).strikeOut(entry, because, why));
    }

    /** Puts it back into every figure. */
    void restore() {
        change(
                "runsheet.written.restoring",
                "runsheet.written.restored",
                (entry, why) -> new StrikeOut(book).restore(entry, why));
    }

    /** It is the run it was taken for. */
    void same() {
        change(
                "runsheet.written.same.why",
                "runsheet.written.same_now",
                (entry, why) -> new DecideSameRun(book).same(entry, why));
    }

    /** It is a run of its own. */
    void another() {
        change(
                "runsheet.written.another.why",
                "runsheet.written.another_now",
                (entry, why) -> new DecideSameRun(book).another(entry, why));
    }

    private void change(String whyKey, String doneKey, BiFunction<Entry<Run>, String, Outcome<Written>> work) {
        if (working || isEarlierDay()) {
            return;
        }
        working = true;
        failure.none();
        Entry<Run> entry = entry();
        String named = named();
        String why = texts.get(whyKey, named);
        context.tasks()
                .write(
                        why,
                        () -> work.apply(entry, why),
                        outcome -> {
                            working = false;
                            said(outcome);
                            if (outcome.didWork()) {
                                follow(true);
                                done(doneKey, named, outcome.orThrow());
                            }
                            refresh();
                        },
                        this::couldNot);
    }

    private void done(String key, String named, Written written) {
        context.window()
                .say(
                        texts.get(key, named),
                        Caption.of(texts.get("runsheet.undo.word")),
                        () -> undo.undo(written.change()));
        context.window().changed();
    }

    private void said(Outcome<?> outcome) {
        failure.refused(outcome.problems(), words::sentence, model.texts());
    }

    private void couldNot(Throwable thrown) {
        LOG.error("a written run could not be changed", thrown);
        working = false;
        failure.broke(texts.get("runsheet.written.not_saved"));
        draft.typed();
        tell();
    }

    // Looking on

    /**
     * The run is written differently by now.
     *
     * @param own whether it was changed from here
     */
    private void follow(boolean own) {
        correct.open(entry().id()).ifPresent(now -> {
            run = now;
            model.reopen(now);
            meanwhile = !own && model.isDirty();
        });
        look(false);
    }

    /** What is read from the file. */
    private record Look(List<Amended> history, Optional<Drafts.Draft> draft) {}

    private void look(boolean withDraft) {
        Entry<Run> entry = entry();
        opening.run(
                texts.get("runsheet.opening"),
                () -> new Look(SeeHistory.of(book.logbook(), entry), withDraft ? draft.find() : Optional.empty()),
                this::looked,
                thrown -> {
                    LOG.error("the history of a run could not be read", thrown);
                    by = texts.get("runsheet.written.by_not_read");
                    tell();
                });
    }

    private void looked(Look found) {
        history = found.history();
        by = words.writtenBy(history, book.view().zone());
        changedBy = words.changedBy(history, book.view().zone());
        found.draft()
                .ifPresent(kept -> draft.found(kept, () -> {
                    why.from(kept.fields());
                    view.focus(model.restore(kept.fields(), run.texts()).orElse(RunField.RUNNING));
                }));
        tell();
    }

    private void modelChanged() {
        failure.typed(model.texts());
        draft.typed();
        if (!model.isDirty()) {
            meanwhile = false;
        }
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
