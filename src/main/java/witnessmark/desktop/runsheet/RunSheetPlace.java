package witnessmark.desktop.runsheet;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Objects;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunSheet;
import witnessmark.wording.Units;

/** The run sheet in the window: Ctrl+2, and Ctrl+R from anywhere. */
public final class RunSheetPlace implements Place {
    private final RunContext context;
    private final RunSheetModel model;
    private final RunSheetActions actions;
    private final RunWords words;
    private final List<Command> commands;
    private @Nullable RunSheetPanel panel;

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
        this.commands = List.of(new Command(
                context.texts(), "runsheet.log", CommandMenu.RECORD, 1, Keys.menu(KeyEvent.VK_R), this::logRun));
    }

    @Override
    public PlaceId id() {
        return PlaceId.RUN_SHEET;
    }

    @Override
    public JComponent component() {
        RunSheetPanel page = panel();
        context.window().heading(PlaceId.RUN_SHEET, context.texts().get("runsheet.heading.new"));
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return panel().form().input(model.firstEmpty());
    }

    @Override
    public void refresh() {
        actions.refresh();
    }

    @Override
    public List<Command> commands() {
        return commands;
    }

    RunSheetModel model() {
        return model;
    }

    /** From anywhere: the sheet, with the caret where typing begins. What was typed and not saved is still there. */
    private void logRun() {
        context.window().go(PlaceId.RUN_SHEET);
        panel().focus(model.firstEmpty());
    }

    private RunSheetPanel panel() {
        RunSheetPanel made = panel;
        if (made == null) {
            made = new RunSheetPanel(model, actions, words, this::leave);
            actions.seenBy(made);
            panel = made;
        }
        return Objects.requireNonNull(made);
    }

    private void leave() {
        context.window().go(PlaceId.BEFORE_WE_GO);
    }
}
