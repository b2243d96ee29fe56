package witnessmark.desktop.sheets;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Refusal;
import witnessmark.desktop.task.Later;
import witnessmark.desktop.task.Latest;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.sheets.CorrectSheet;
import witnessmark.logbook.sheets.FoundProblem;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.SheetNote;
import witnessmark.logbook.sheets.SheetReading;
import witnessmark.logbook.sheets.SheetTyped;
import witnessmark.logbook.sheets.TypedSheet;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.wording.Texts;

/** What happens off the event thread for a sheet: looking for contradictions while somebody types, and saving. */
final class SheetActions {
    private static final Logger LOG = LoggerFactory.getLogger(SheetActions.class);
    private static final Duration QUIET = Duration.ofMillis(150);

    private final SheetsContext context;
    private final Texts texts;
    private final TypedSheet typing;
    private final SheetModel model;
    private final SheetWords words;
    private final Latest checks;
    private final Latest reads;
    private final Later checkSoon;
    private final SheetDraft draft;
    private final List<Runnable> listeners = new ArrayList<>();
    private @Nullable SheetReading looked;
    private boolean saving;
    private @Nullable Runnable onceRead;
    private Runnable restored = () -> {};
    private Consumer<SheetReading> wrote = reading -> {};
    private final Refusal failure = new Refusal();

    SheetActions(SheetsContext context, TypedSheet typing, SheetModel model, SheetWords words) {
        this.context = context;
        this.texts = context.texts();
        this.typing = typing;
        this.model = model;
        this.words = words;
        this.checks = new Latest(context.tasks());
        this.reads = new Latest(context.tasks());
        this.checkSoon = context.tasks().later(QUIET, this::check);
        this.draft = new SheetDraft(context, model, this::tell, () -> restored.run());
        model.onChange(this::modelChanged);
        model.onSlow(this::readSoon);
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** Says what is told when a draft stands on the sheet again. */
    void onRestored(Runnable listener) {
        restored = listener;
    }

    /** Says what is told whenever something was written, with what that was. */
    void onWritten(Consumer<SheetReading> listener) {
        wrote = listener;
    }

    /** Why it could not be saved, in sentences; empty when nothing went wrong. */
    String failure() {
        return failure.said();
    }

    /** What is to be said about the draft; empty while there is none. */
    String draftLine() {
        return draft.line();
    }

    /** Somebody looks at the sheet: afresh, with what was typed and not saved. */
    void open() {
        model.open();
        draft.open();
    }

    /**
     * Looks at the logbook as it is now, off the event thread, before the sheet is read again.
     *
     * @param then told in any case
     */
    void look(Runnable then) {
        context.tasks()
                .run(
                        texts.get("sheets.opening"),
                        () -> {
                            typing.look();
                            return typing;
                        },
                        looked -> then.run(),
                        thrown -> {
                            LOG.error("what a sheet asks of the logbook could not be worked out", thrown);
                            then.run();
                        });
    }

    /**
     * Empties the sheet, or puts back what is written; that can be undone.
     *
     * @param back told when what was typed stands on it again
     */
    void clear(Runnable back) {
        boolean typed = model.isDirty();
        failure.none();
        model.clear();
        draft.discard();
        if (typed) {
            String said = model.sheet() instanceof CorrectSheet ? "sheets.put_back.said" : "sheets.clear.said";
            say(texts.get(said), back);
        }
        tell();
    }

    /**
     * Undoes the clearing.
     *
     * @param back told when what was typed stands on the sheet again
     */
    void putBack(Runnable back) {
        if (!model.canPutBack()) {
            return;
        }
        failure.none();
        model.putBack();
        String said = texts.get("sheets.cleared_back");
        if (model.canPutBack()) {
            say(said, back);
        } else {
            context.window().say(said);
        }
        back.run();
        tell();
    }

    private void say(String said, Runnable back) {
        context.window().say(said, Caption.of(texts.get("sheets.undo")), () -> putBack(back));
    }

    /**
     * Saves the sheet.
     *
     * @param stopped told which field keeps it from being saved
     * @param done told what was written when it is in the logbook
     */
    void save(Consumer<SheetField> stopped, Consumer<SheetReading> done) {
        if (saving) {
            return;
        }
        failure.none();
        boolean good = model.ask();
        if (model.waits()) {
            onceRead = () -> save(stopped, done);
            return;
        }
        if (!good) {
            model.stopped().stream().findFirst().ifPresent(stopped);
            tell();
            return;
        }
        saving = true;
        draft.hold();
        Map<SheetField, String> typed = model.texts();
        SheetReading reading = model.reading();
        List<String> about = model.about();
        String why = words.why(about);
        context.tasks()
                .write(
                        texts.get("sheets.saving"),
                        () -> attempt(typed, reading, why),
                        attempt -> ended(attempt, about, stopped, done),
                        this::broke);
    }

    /** What came of saving. */
    private record Attempt(
            SheetReading reading,
            List<FoundProblem> found,
            Outcome<Optional<Written>> outcome,
            Optional<SheetNote> after) {}

    private Attempt attempt(Map<SheetField, String> typed, SheetReading reading, String why) {
        List<FoundProblem> found = typing.check(reading);
        List<Problem> stops =
                found.stream().map(FoundProblem::problem).filter(Problem::stops).toList();
        Outcome<Optional<Written>> outcome = stops.isEmpty() ? typing.save(typed, why) : Outcome.didNot(stops);
        Optional<SheetNote> after = outcome.didWork()
                ? typing.sheet().afterSaving(new SheetTyped(typed), typing.sight())
                : Optional.empty();
        return new Attempt(reading, found, outcome, after);
    }

    private void ended(Attempt attempt, List<String> about, Consumer<SheetField> stopped, Consumer<SheetReading> done) {
        if (!attempt.outcome().didWork()) {
            stays();
            model.found(attempt.reading(), attempt.found());
            failure.refused(attempt.outcome().problems(), words::sentence, model.texts());
            model.stopped().stream().findFirst().ifPresent(stopped);
            tell();
            return;
        }
        boolean changed = attempt.outcome().orThrow().isPresent();
        look(() -> written(changed ? words.saved(about, attempt.after()) : "", () -> {
            done.accept(attempt.reading());
            wrote.accept(attempt.reading());
        }));
    }

    /**
     * The draft goes first: the page that is shown next says what was begun and not saved.
     *
     * @param said what was written, or empty when nothing was
     */
    private void written(String said, Runnable done) {
        draft.discard(() -> {
            saving = false;
            done.run();
            if (said.isEmpty()) {
                context.window().say(texts.get("sheets.nothing_changed"));
            } else {
                context.window().say(said, Caption.of(texts.get("sheets.undo")), context.undo());
                context.window().changed();
            }
            tell();
        });
    }

    /**
     * Does something else to what is written: takes it out, puts it back.
     *
     * @param name what is being done, in words
     * @param said once it is done
     */
    void perform(String name, Callable<Outcome<Written>> work, String said, Runnable done) {
        if (saving) {
            return;
        }
        saving = true;
        draft.hold();
        failure.none();
        context.tasks()
                .write(
                        name,
                        work,
                        outcome -> {
                            if (outcome.didWork()) {
                                look(() -> written(said, done));
                            } else {
                                stays();
                                failure.refused(outcome.problems(), words::sentence, model.texts());
                                tell();
                            }
                        },
                        this::broke);
    }

    private void broke(Throwable thrown) {
        LOG.error("a sheet could not be saved", thrown);
        stays();
        failure.broke(texts.get("sheets.not_saved"));
        tell();
    }

    /** It is not saved: what is typed stays, and is kept. */
    private void stays() {
        saving = false;
        draft.release();
    }

    private void modelChanged() {
        failure.typed(model.texts());
        if (model.reading() != looked) {
            looked = model.reading();
            if (!model.reading().entries().isEmpty()) {
                checkSoon.poke();
            }
        }
    }

    /** What is typed needs something of the logbook that takes a while: it is read off the event thread. */
    private void readSoon() {
        Map<SheetField, String> typed = model.texts();
        reads.run(
                texts.get("sheets.checking"),
                () -> typing.read(typed),
                reading -> {
                    model.read(typed, reading);
                    Runnable next = onceRead;
                    onceRead = null;
                    if (next != null) {
                        next.run();
                    }
                },
                thrown -> {
                    onceRead = null;
                    LOG.error("a sheet could not be read", thrown);
                });
    }

    private void check() {
        SheetReading reading = model.reading();
        checks.run(
                texts.get("sheets.checking"),
                () -> typing.check(reading),
                found -> model.found(reading, found),
                thrown -> LOG.error("a sheet could not be checked against the logbook", thrown));
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
