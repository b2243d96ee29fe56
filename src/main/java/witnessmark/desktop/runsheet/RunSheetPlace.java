package witnessmark.desktop.runsheet;

import java.awt.CardLayout;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Objects;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunSheet;
import witnessmark.logbook.told.TellRunning;
import witnessmark.wording.Units;

/** The run sheet in the window: Ctrl+2, and Ctrl+R from anywhere; and the form for running told by others. */
public final class RunSheetPlace implements Place {
    private static final String RUN = "run";
    private static final String TOLD = "told";

    private final RunContext context;
    private final RunSheetModel model;
    private final RunSheetActions actions;
    private final RunWords words;
    private final ToldModel toldModel;
    private final ToldActions toldActions;
    private final ToldWords toldWords;
    private final List<Command> commands;
    private final CardLayout cards = new CardLayout();
    private @Nullable Shown shown;
    private boolean told;

    /** The two forms, once somebody has been here. */
    private record Shown(JPanel page, RunSheetPanel run, ToldPanel told) {}

    /** @param undo shared with the Edit menu */
    public RunSheetPlace(RunContext context, UndoActions undo) {
        this.context = context;
        this.words = new RunWords(context.texts(), context.measures());
        Units units = context.measures().units();
        RunSheet sheet = new RunSheet(
                context.book(),
                context.ids(),
                new FieldUnits(
                        units.pressure(), units.temperature(), units.volume(), units.distance(), context.days()));
        this.model = new RunSheetModel(sheet);
        this.actions = new RunSheetActions(context, sheet, model, words, undo);
        TellRunning telling = new TellRunning(context.book(), context.ids(), context.days());
        this.toldWords = new ToldWords(context.texts(), context.measures());
        this.toldModel = new ToldModel(telling);
        this.toldActions = new ToldActions(context, telling, toldModel, toldWords, undo);
        this.commands = List.of(
                new Command(
                        context.texts(), "runsheet.log", CommandMenu.RECORD, 1, Keys.menu(KeyEvent.VK_R), this::logRun),
                new Command(context.texts(), "runsheet.told", CommandMenu.RECORD, 2, null, this::tellRunning));
    }

    @Override
    public PlaceId id() {
        return PlaceId.RUN_SHEET;
    }

    @Override
    public JComponent component() {
        return shown().page();
    }

    @Override
    public JComponent firstFocus() {
        return told
                ? shown().told().input(toldModel.firstEmpty())
                : shown().run().form().input(model.firstEmpty());
    }

    @Override
    public void refresh() {
        actions.refresh();
        if (told) {
            toldActions.refresh();
        }
        head();
    }

    @Override
    public List<Command> commands() {
        return commands;
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

    /** From anywhere: the sheet, with the caret where typing begins. What was typed and not saved is still there. */
    private void logRun() {
        show(false);
        context.window().go(PlaceId.RUN_SHEET);
        shown().run().focus(model.firstEmpty());
    }

    private void tellRunning() {
        show(true);
        context.window().go(PlaceId.RUN_SHEET);
        shown().told().box(toldModel.firstEmpty()).takeFocus();
    }

    private void show(boolean running) {
        told = running;
        cards.show(shown().page(), running ? TOLD : RUN);
        head();
    }

    private void head() {
        context.window()
                .heading(
                        PlaceId.RUN_SHEET,
                        context.texts().get(told ? "runsheet.heading.told" : "runsheet.heading.new"));
    }

    private Shown shown() {
        Shown made = shown;
        if (made == null) {
            RunSheetPanel run = new RunSheetPanel(model, actions, words, this::leave);
            actions.seenBy(run);
            ToldPanel hearsay = new ToldPanel(toldModel, toldActions, toldWords, this::leaveTold);
            JPanel page = new JPanel(cards);
            page.setOpaque(false);
            page.add(run, RUN);
            page.add(hearsay, TOLD);
            made = new Shown(page, run, hearsay);
            shown = made;
        }
        return Objects.requireNonNull(made);
    }

    private void leave() {
        context.window().go(PlaceId.BEFORE_WE_GO);
    }

    private void leaveTold() {
        show(false);
        shown().run().focus(model.firstEmpty());
    }
}
