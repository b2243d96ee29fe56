package witnessmark.desktop.runsheet;

import java.awt.CardLayout;
import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.AsideStage;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.logbook.run.CorrectRun;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.logbook.run.WrittenRun;
import witnessmark.logbook.told.TellRunning;
import witnessmark.wording.Units;

/** The run sheet in the window: Ctrl+2, and Ctrl+R from anywhere; and the form for running told by others. */
public final class RunSheetPlace implements Place {
    /** What is seen. */
    private enum Card {
        FRESH,
        TOLD,
        WRITTEN
    }

    private final RunContext context;
    private final RunSheetModel model;
    private final RunSheetActions actions;
    private final RunWords words;
    private final UndoActions undo;
    private final CorrectRun correct;
    private final Set<Id<Run>> drafts = new HashSet<>();
    private final ToldModel toldModel;
    private final ToldActions toldActions;
    private final ToldWords toldWords;
    private final List<Command> commands;
    private final CardLayout cards = new CardLayout();
    private @Nullable Shown shown;
    private @Nullable Opened opened;
    private Consumer<String> planJob = run -> {};
    private Consumer<Id<Run>> bringIn = run -> {};
    private @Nullable Consumer<Id<Trace>> showTrace;
    private Card card = Card.FRESH;

    /** The forms that are always there, once somebody has been here, and where another page may stand in their place. */
    private record Shown(JPanel page, AsideStage stage, RunSheetPanel run, ToldPanel told) {}

    /** A written run on its own form. */
    private record Opened(Id<Run> id, RunSheetModel model, WrittenActions actions, WrittenPanel panel) {}

    /** @param undo shared with the Edit menu */
    public RunSheetPlace(RunContext context, UndoActions undo) {
        this.context = context;
        this.words = new RunWords(context.texts(), context.measures());
        Units units = context.measures().units();
        FieldUnits fields =
                new FieldUnits(units.pressure(), units.temperature(), units.volume(), units.distance(), context.days());
        RunSheet sheet = new RunSheet(context.book(), context.ids(), fields);
        this.undo = undo;
        this.correct = new CorrectRun(context.book(), fields);
        this.model = new RunSheetModel(sheet);
        model.onChange(this::showDraft);
        this.actions = new RunSheetActions(context, sheet, model, words, undo);
        TellRunning telling = new TellRunning(context.book(), context.ids(), context.days());
        this.toldWords = new ToldWords(context.texts(), context.measures());
        this.toldModel = new ToldModel(telling);
        this.toldActions = new ToldActions(context, telling, toldModel, toldWords, undo);
        toldModel.onChange(this::showDraft);
        actions.onChange(this::showDraft);
        toldActions.onChange(this::showDraft);
        actions.lookForDraft();
        toldActions.lookForDraft();
        this.commands = List.of(
                new Command(
                        context.texts(), "runsheet.log", CommandMenu.RECORD, 1, Keys.menu(KeyEvent.VK_R), this::logRun),
                new Command(context.texts(), "runsheet.told", CommandMenu.RECORD, 2, null, this::tellRunning));
    }

    /** Says what plans a job of what was told of a run: told the identity of the run as text. */
    public void onPlanJob(Consumer<String> planJob) {
        this.planJob = planJob;
    }

    /** Says what reports an incident on a run that was saved with the tick that something broke. */
    public void onReport(Consumer<Id<Run>> report) {
        actions.onReport(report);
    }

    /** Says what brings in a trace of a written run. */
    public void onTrace(Consumer<Id<Run>> bringIn) {
        this.bringIn = bringIn;
    }

    /** Says what shows the curves of a trace; without it none is offered. */
    public void onShowTrace(Consumer<Id<Trace>> show) {
        this.showTrace = show;
    }

    /**
     * Says that traces wait to be brought in: on the sheet of a new run, and how many beside the place.
     *
     * @param sentence what; empty for none
     * @param open shows the first of them
     */
    public void waits(String sentence, int count, Runnable open) {
        actions.waits(sentence, open);
        context.window().waiting(PlaceId.RUN_SHEET, count);
    }

    /**
     * Begins the sheet of a new run that something goes with, and brings it into view.
     *
     * @return whether it is begun; not while another run is
     */
    public boolean logWith(GoesWith other) {
        if (!actions.begin(other)) {
            return false;
        }
        logRun();
        return true;
    }

    @Override
    public PlaceId id() {
        return PlaceId.RUN_SHEET;
    }

    @Override
    public JComponent component() {
        return shown().stage().component();
    }

    /** Puts another page in the place of the run sheet until {@link #dismiss} is called. */
    public void stepAside(Aside other) {
        shown().stage().show(other);
    }

    /** Brings the run sheet back as it was left, or what the other page was called from. */
    public void dismiss() {
        if (shown().stage().leave()) {
            refresh();
            firstFocus().requestFocusInWindow();
        }
    }

    @Override
    public void again() {
        if (shown().stage().isAskedFor()) {
            dismiss();
        }
    }

    @Override
    public List<String> help() {
        return aside().map(Aside::help).orElse(List.of(id().helpKey()));
    }

    private Optional<Aside> aside() {
        return Optional.ofNullable(shown).flatMap(made -> made.stage().shown());
    }

    /** The written run in view; none while another page is, or the sheet of a new run. */
    public Optional<Id<Run>> runInView() {
        Opened written = opened;
        return written == null || card != Card.WRITTEN || !written.panel().isShowing()
                ? Optional.empty()
                : Optional.of(written.id());
    }

    @Override
    public JComponent firstFocus() {
        return aside().map(Aside::firstFocus).orElseGet(this::ownFocus);
    }

    private JComponent ownFocus() {
        Opened written = opened;
        return switch (card) {
            case TOLD -> shown().told().input(toldModel.firstEmpty());
            case WRITTEN ->
                written == null
                        ? shown().run().form().input(model.firstEmpty())
                        : written.panel().form().input(RunField.RUNNING);
            case FRESH -> shown().run().form().input(model.firstEmpty());
        };
    }

    @Override
    public void refresh() {
        aside().ifPresent(Aside::changed);
        actions.refresh();
        if (card == Card.TOLD) {
            toldActions.refresh();
        }
        Opened written = opened;
        if (written != null) {
            written.actions().refresh();
        }
        head();
    }

    @Override
    public void open() {
        if (card == Card.WRITTEN && aside().isEmpty() && shown().stage().isAskedFor()) {
            show(Card.FRESH);
        }
    }

    /** Opens a written run, whatever its standing. */
    @Override
    public void open(String record) {
        Opened before = opened;
        if (before != null && before.id().text().equals(record)) {
            show(Card.WRITTEN);
            return;
        }
        Optional<WrittenRun> found = correct.open(Id.<Run>parse(record));
        if (found.isEmpty()) {
            context.window().say(context.texts().get("runsheet.written.not_there"));
            show(Card.FRESH);
            return;
        }
        Opened made = opened(found.get());
        if (before != null) {
            before.actions().left();
            shown().page().remove(before.panel());
        }
        opened = made;
        shown().page().add(made.panel(), Card.WRITTEN.name());
        show(Card.WRITTEN);
        made.actions().refresh();
    }

    private Opened opened(WrittenRun run) {
        RunSheetModel written = new RunSheetModel(run);
        WrittenActions doing = new WrittenActions(context, correct, run, written, words, undo);
        TraceRows traces = new TraceRows(
                words,
                () -> context.book().view().facts(),
                run.entry().id(),
                () -> bringIn.accept(run.entry().id()),
                showTrace);
        WrittenPanel panel = new WrittenPanel(
                written,
                doing,
                words,
                traces,
                () -> planJob.accept(run.entry().id().text()),
                this::logRun,
                this::leave);
        doing.seenBy(panel);
        doing.onChange(this::head);
        Id<Run> id = run.entry().id();
        written.onChange(() -> {
            if (written.isDirty()) {
                drafts.add(id);
            } else {
                drafts.remove(id);
            }
            showDraft();
        });
        return new Opened(id, written, doing, panel);
    }

    /** Says beside the place that something typed here is not in the logbook. */
    private void showDraft() {
        boolean typed = model.isDirty() || toldModel.isDirty() || !drafts.isEmpty();
        context.window().draft(PlaceId.RUN_SHEET, typed || actions.draftWaits() || toldActions.draftWaits());
    }

    @Override
    public List<Command> commands() {
        return commands;
    }

    void saveNew() {
        actions.save(false);
    }

    RunSheetModel model() {
        return model;
    }

    ToldModel toldModel() {
        return toldModel;
    }

    RunSheetPanel panel() {
        return shown().run();
    }

    ToldPanel toldPanel() {
        return shown().told();
    }

    /** Whether a written run is seen. */
    boolean isWritten() {
        return card == Card.WRITTEN && opened != null;
    }

    /** The page of the written run in hand. */
    WrittenPanel writtenPanel() {
        return Objects.requireNonNull(opened).panel();
    }

    RunSheetModel writtenModel() {
        return Objects.requireNonNull(opened).model();
    }

    WrittenActions writtenActions() {
        return Objects.requireNonNull(opened).actions();
    }

    /** From anywhere: the sheet, with the caret where typing begins. What was typed and not saved is still there. */
    private void logRun() {
        show(Card.FRESH);
        context.window().go(PlaceId.RUN_SHEET);
        shown().run().focus(model.firstEmpty());
    }

    private void tellRunning() {
        show(Card.TOLD);
        context.window().go(PlaceId.RUN_SHEET);
        shown().told().box(toldModel.firstEmpty()).takeFocus();
    }

    private void show(Card next) {
        card = next;
        shown().stage().dismiss();
        cards.show(shown().page(), next.name());
        head();
    }

    private void head() {
        if (aside().isPresent()) {
            return; // its title stands there
        }
        context.window().heading(PlaceId.RUN_SHEET, heading());
    }

    /** What is said beside the title. */
    String heading() {
        Opened written = opened;
        return switch (card) {
            case FRESH -> context.texts().get("runsheet.heading.new");
            case TOLD -> context.texts().get("runsheet.heading.told");
            case WRITTEN ->
                written == null
                        ? ""
                        : context.texts()
                                .get(
                                        written.actions().isStruckOut()
                                                ? "runsheet.heading.struck"
                                                : "runsheet.heading.written",
                                        written.actions().named(),
                                        context.measures().date(day(written)));
        };
    }

    private static LocalDate day(Opened written) {
        return written.actions().entry().fact().start().day();
    }

    private Shown shown() {
        Shown made = shown;
        if (made == null) {
            RunSheetPanel run = new RunSheetPanel(model, actions, words, this::leave);
            actions.seenBy(run);
            ToldPanel hearsay = new ToldPanel(toldModel, toldActions, toldWords, this::leaveTold);
            JPanel page = new JPanel(cards);
            page.setOpaque(false);
            page.add(run, Card.FRESH.name());
            page.add(hearsay, Card.TOLD.name());
            AsideStage stage = new AsideStage(context.window(), PlaceId.RUN_SHEET, page, context.window()::go);
            made = new Shown(page, stage, run, hearsay);
            shown = made;
        }
        return Objects.requireNonNull(made);
    }

    private void leave() {
        context.window().go(PlaceId.BEFORE_WE_GO);
    }

    private void leaveTold() {
        show(Card.FRESH);
        shown().run().focus(model.firstEmpty());
    }
}
