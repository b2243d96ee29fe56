package witnessmark.desktop.runsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.KeptDraft;
import witnessmark.desktop.form.Refusal;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.wording.Texts;

/** What happens off the event thread for the run sheet: opening, drafts, the live forecast, saving, taking back. */
final class RunSheetActions {
    private static final Logger LOG = LoggerFactory.getLogger(RunSheetActions.class);
    static final String FORM = "run sheet";

    private final RunContext context;
    private final Texts texts;
    private final RunSheet sheet;
    private final RunSheetModel model;
    private final RunWords words;
    private final UndoActions undo;
    private final KeptDraft draft;
    private final Latest opening;
    private final List<Runnable> listeners = new ArrayList<>();
    private SheetView view = SheetView.NOBODY;
    private @Nullable Id<Car> wanted;
    private @Nullable GoesWith with;
    private boolean fills;
    private String waiting = "";
    private Runnable openWaiting = () -> {};
    private Consumer<Id<Run>> report = run -> {};
    private boolean begun;
    private boolean saving;
    private final Refusal failure = new Refusal();

    RunSheetActions(RunContext context, RunSheet sheet, RunSheetModel model, RunWords words, UndoActions undo) {
        this.context = context;
        this.texts = context.texts();
        this.sheet = sheet;
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
                () -> model.draft(view.focused().orElse(null)),
                this::tell);
        this.opening = new Latest(context.tasks());
        model.onChange(() -> {
            failure.typed(model.texts());
            draft.typed();
        });
        LiveForecast.of(context.tasks(), texts, model);
    }

    void seenBy(SheetView seen) {
        view = seen;
    }

    /** Says what reports an incident on a run that was just saved. */
    void onReport(Consumer<Id<Run>> report) {
        this.report = report;
    }

    /** Told when the draft line, the failure or what is being done has changed. */
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

    /** Why the last saving did not work, in full; empty when it did. */
    String failure() {
        return failure.said();
    }

    /** Opens the sheet the first time; later looks again at what the logbook says now. */
    void refresh() {
        if (!begun) {
            begun = true;
            opening.run(texts.get("runsheet.opening"), this::look, this::opened, this::couldNotOpen);
        } else if (model.isOpen()) {
            failure.none(); // why it was refused may hold no longer
            if (model.isDirty()) {
                model.fill(Map.of());
            } else {
                model.fill(sheet.fresh(wanted));
            }
        }
    }

    /** The focus left a field. */
    void left() {
        draft.now();
    }

    /** Saves the run and goes on to the next, of the same car or of the next one. */
    void save(boolean nextCar) {
        if (saving) {
            return;
        }
        failure.none();
        boolean can = model.ask();
        Entry<Run> run = model.reading().run();
        if (!can || run == null) {
            model.stopped().stream().findFirst().ifPresent(view::focus);
            tell();
            return;
        }
        saving = true;
        draft.hold();
        Map<RunField, String> fields = model.texts();
        String what = words.run(run.fact(), car(run.fact()));
        Consumer<Id<Run>> then = model.broke() ? report : saved -> {};
        GoesWith beside = with;
        context.tasks()
                .write(
                        texts.get("runsheet.saving"),
                        () -> write(fields, what, nextCar, beside),
                        saved -> saved(fields, what, saved, then),
                        this::couldNotSave);
    }

    // What goes with it

    /**
     * Begins the sheet of a run that something goes with.
     *
     * @return whether it is begun; not while another run is
     */
    boolean begin(GoesWith other) {
        if (model.isDirty() || draft.waits() || saving) {
            return false;
        }
        with = other;
        fills = true;
        if (model.isOpen()) {
            fillIn();
        }
        return true;
    }

    private void fillIn() {
        GoesWith now = with;
        if (now == null || !fills) {
            return;
        }
        fills = false;
        Map<RunField, String> filled = now.filled();
        sheet.car(filled).ifPresent(car -> model.fill(sheet.fresh(car)));
        for (RunField field : RunField.values()) {
            String text = filled.get(field);
            if (text != null) {
                model.type(field, text);
                model.leave(field);
            }
        }
        if (filled.containsKey(RunField.OUT_AT)) {
            model.type(RunField.PLANNED, sheet.plannedAt(model.texts()));
        }
        view.focus(model.firstEmpty());
        tell();
    }

    /**
     * Something waits that may be logged.
     *
     * @param sentence what; empty for nothing
     * @param open shows it
     */
    void waits(String sentence, Runnable open) {
        waiting = sentence;
        openWaiting = open;
        tell();
    }

    /** What waits that may be logged; empty for nothing. */
    String waiting() {
        return waiting;
    }

    void openWaiting() {
        openWaiting.run();
    }

    /** What is written with this run, by its name; empty for nothing. */
    Optional<String> goesWith() {
        return Optional.ofNullable(with).map(GoesWith::name);
    }

    /** The run is to be saved without it. */
    void alone() {
        with = null;
        tell();
    }

    /** Empties the sheet; it can be put back once. */
    void clear() {
        with = null;
        if (!model.isDirty()) {
            view.focus(model.firstEmpty());
            return;
        }
        model.clear(sheet.fresh(wanted));
        failure.none();
        draft.discard();
        view.focus(model.firstEmpty());
        context.window().say(texts.get("runsheet.cleared"), Caption.of(texts.get("runsheet.undo.word")), this::putBack);
    }

    /** Puts back what was cleared. */
    void putBack() {
        if (model.canPutBack()) {
            model.putBack();
            draft.typed();
            view.focus(model.firstEmpty());
            String said = texts.get("runsheet.put_back");
            if (model.canPutBack()) {
                context.window().say(said, Caption.of(texts.get("runsheet.undo.word")), this::putBack);
            } else {
                context.window().say(said);
            }
        }
    }

    // Opening

    /** What opening reads. */
    private record Opening(Map<RunField, String> fresh, Optional<Drafts.Draft> draft) {}

    /** What saving leaves. */
    private record Saved(
            Outcome<Written> outcome,
            Map<RunField, String> fresh,
            @Nullable Id<Car> car) {}

    private Opening look() {
        return new Opening(sheet.fresh(null), draft.find());
    }

    private void opened(Opening found) {
        Optional<Drafts.Draft> kept = found.draft();
        if (kept.isPresent()) {
            draft.found(
                    kept.get(),
                    () -> model.restore(kept.get().fields(), found.fresh()).ifPresent(view::focus));
        } else {
            model.fill(found.fresh());
        }
        fillIn();
        tell();
    }

    private void couldNotOpen(Throwable thrown) {
        LOG.error("the run sheet could not be opened", thrown);
        begun = false;
        failure.broke(texts.get("runsheet.not_opened"));
        tell();
    }

    // Saving

    private Saved write(Map<RunField, String> fields, String what, boolean nextCar, @Nullable GoesWith beside) {
        Outcome<Written> outcome = beside == null
                ? sheet.save(fields, texts.get("runsheet.why", what))
                : sheet.toWrite(fields)
                        .then(run -> beside.save(run, fields, texts.get("runsheet.why.with", what, beside.name())));
        if (!outcome.didWork()) {
            return new Saved(outcome, Map.of(), null);
        }
        draft.discardHere();
        @Nullable
        Id<Car> car = nextCar ? sheet.nextCar(fields) : sheet.car(fields).orElse(null);
        return new Saved(outcome, sheet.fresh(car), car);
    }

    private void saved(Map<RunField, String> fields, String what, Saved saved, Consumer<Id<Run>> then) {
        saving = false;
        if (!saved.outcome().didWork()) {
            failure.refused(saved.outcome().problems(), words::sentence, model.texts());
            draft.typed();
            tell();
            return;
        }
        Written written = saved.outcome().orThrow();
        GoesWith beside = with;
        with = null;
        wanted = saved.car();
        draft.gone();
        model.moveOn(fields, saved.fresh());
        view.focus(model.firstEmpty());
        context.window()
                .say(
                        savedSentence(written, what),
                        Caption.of(texts.get("runsheet.undo.word")),
                        () -> undo.undo(written.change()));
        context.window().changed();
        tell();
        if (beside != null) {
            beside.saved();
        }
        runs(written).findFirst().map(Entry::id).ifPresent(then);
    }

    /** What was saved; that it may be another run, or which figures are unlike the engine's own, comes with it. */
    private String savedSentence(Written written, String what) {
        if (isMarked(written)) {
            return texts.get("runsheet.saved.perhaps_same", what);
        }
        String queried = runs(written)
                .flatMap(run -> words.fields(run.fact().queried()).stream())
                .collect(Collectors.joining(", "));
        return queried.isEmpty()
                ? texts.get("runsheet.saved", what)
                : texts.get("runsheet.saved.queried", what, queried);
    }

    private void couldNotSave(Throwable thrown) {
        LOG.error("a run could not be saved", thrown);
        saving = false;
        failure.broke(texts.get("runsheet.not_saved"));
        draft.typed();
        tell();
    }

    /** Whether the run was saved as perhaps the same as another. */
    private static boolean isMarked(Written written) {
        return runs(written).anyMatch(run -> run.fact().perhapsSame() != null);
    }

    private static Stream<Entry<Run>> runs(Written written) {
        return written.amendments().stream()
                .map(amendment -> written.facts().of(Run.class).find(new Id<Run>(amendment.record())))
                .flatMap(Optional::stream);
    }

    private String car(Run run) {
        Id<Car> car = run.car();
        return car == null
                ? ""
                : context.book().view().facts().of(Car.class).get(car).name();
    }

    /** The problems of the run as a whole, those that stop it first. */
    List<Problem> wholeRun() {
        return model.wholeRun().stream()
                .sorted(java.util.Comparator.comparing(problem -> !problem.stops()))
                .toList();
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
