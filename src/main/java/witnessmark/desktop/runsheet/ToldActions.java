package witnessmark.desktop.runsheet;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.KeptDraft;
import witnessmark.desktop.form.Refusal;
import witnessmark.desktop.task.Later;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.ToldRunning;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.told.TellRunning;
import witnessmark.logbook.told.ToldField;
import witnessmark.logbook.told.ToldReading;
import witnessmark.outcome.Outcome;
import witnessmark.wording.Texts;

/** What happens off the event thread for running told by others. */
final class ToldActions {
    private static final Logger LOG = LoggerFactory.getLogger(ToldActions.class);
    private static final String FORM = "told running";
    private static final Duration QUIET = Duration.ofMillis(120);

    private final RunContext context;
    private final Texts texts;
    private final TellRunning telling;
    private final ToldModel model;
    private final ToldWords words;
    private final UndoActions undo;
    private final KeptDraft draft;
    private final Latest opening;
    private final Latest lives;
    private final Later lifeSoon;
    private final List<Runnable> listeners = new ArrayList<>();
    private @Nullable ToldReading looked;
    private boolean begun;
    private boolean saving;
    private final Refusal failure = new Refusal();

    ToldActions(RunContext context, TellRunning telling, ToldModel model, ToldWords words, UndoActions undo) {
        this.context = context;
        this.texts = context.texts();
        this.telling = telling;
        this.model = model;
        this.words = words;
        this.undo = undo;
        this.draft = new KeptDraft(
                context.book(),
                context.tasks(),
                texts,
                FORM,
                KeptDraft.NEW,
                model::isDirty,
                () -> model.draft(null),
                this::tell);
        this.opening = new Latest(context.tasks());
        this.lives = new Latest(context.tasks());
        this.lifeSoon = context.tasks().later(QUIET, this::look);
        model.onChange(this::modelChanged);
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** Finds out whether a draft waits to be opened. */
    void lookForDraft() {
        draft.lookFor();
    }

    boolean draftWaits() {
        return draft.waits();
    }

    String draftLine() {
        return draft.line();
    }

    String failure() {
        return failure.said();
    }

    void refresh() {
        if (begun) {
            model.reread();
            return;
        }
        begun = true;
        opening.run(texts.get("runsheet.opening"), draft::find, this::opened, thrown -> {
            LOG.error("the draft of told running could not be read", thrown);
            begun = false;
        });
    }

    void left() {
        draft.now();
    }

    /**
     * Saves what was told.
     *
     * @param stopped told which field keeps it from being saved
     * @param done told when it is in the logbook
     */
    void save(java.util.function.Consumer<ToldField> stopped, Runnable done) {
        if (saving) {
            return;
        }
        failure.none();
        boolean can = model.ask();
        Entry<ToldRunning> told = model.reading().told();
        if (!can || told == null) {
            model.stopped().stream().findFirst().ifPresent(stopped);
            tell();
            return;
        }
        saving = true;
        draft.hold();
        Map<ToldField, String> fields = model.texts();
        String engine = context.book()
                .view()
                .facts()
                .of(Engine.class)
                .get(told.fact().engine())
                .number();
        context.tasks()
                .write(
                        texts.get("runsheet.saving"),
                        () -> write(fields, engine),
                        outcome -> saved(engine, outcome, done),
                        thrown -> {
                            LOG.error("told running could not be saved", thrown);
                            saving = false;
                            failure.broke(texts.get("runsheet.told.not_saved"));
                            draft.typed();
                            tell();
                        });
    }

    /**
     * Empties the form; that can be undone.
     *
     * @param back told when what was typed stands on it again
     */
    void clear(Runnable back) {
        boolean typed = model.isDirty();
        model.clear();
        failure.none();
        draft.discard();
        if (typed) {
            say(texts.get("runsheet.cleared"), back);
        }
    }

    /**
     * Puts back what was cleared.
     *
     * @param back told when what was typed stands on the form again
     */
    void putBack(Runnable back) {
        if (model.canPutBack()) {
            failure.none();
            model.putBack();
            draft.typed();
            String said = texts.get("runsheet.put_back");
            if (model.canPutBack()) {
                say(said, back);
            } else {
                context.window().say(said);
            }
            back.run();
        }
    }

    private void say(String said, Runnable back) {
        context.window().say(said, Caption.of(texts.get("runsheet.undo.word")), () -> putBack(back));
    }

    private Outcome<Written> write(Map<ToldField, String> fields, String engine) {
        Outcome<Written> outcome = telling.save(fields, texts.get("runsheet.told.why", engine));
        if (outcome.didWork()) {
            draft.discardHere();
        }
        return outcome;
    }

    private void saved(String engine, Outcome<Written> outcome, Runnable done) {
        saving = false;
        if (!outcome.didWork()) {
            failure.refused(outcome.problems(), words::sentence, model.texts());
            draft.typed();
            tell();
            return;
        }
        draft.gone();
        model.saved();
        Written written = outcome.orThrow();
        context.window()
                .say(
                        texts.get("runsheet.told.saved", engine),
                        Caption.of(texts.get("runsheet.undo.word")),
                        () -> undo.undo(written.change()));
        context.window().changed();
        tell();
        done.run();
    }

    private void opened(Optional<Drafts.Draft> kept) {
        kept.ifPresent(found -> draft.found(found, () -> model.restore(found.fields())));
        tell();
    }

    private void modelChanged() {
        failure.typed(model.texts());
        draft.typed();
        if (model.reading() != looked) {
            looked = model.reading();
            lifeSoon.poke();
        }
    }

    private void look() {
        ToldReading reading = model.reading();
        lives.run(
                texts.get("runsheet.forecasting"),
                () -> telling.life(reading),
                answer -> model.life(reading, answer),
                thrown -> LOG.error("the life with told running could not be worked out", thrown));
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
