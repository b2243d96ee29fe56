package witnessmark.desktop.trials;

import java.util.List;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.wording.Texts;

/** What the menus offer of trials. */
public final class TrialCommands {
    private TrialCommands() {}

    /** @param show shows the trial looked at last, else the first that goes on */
    public static List<Command> of(Texts texts, Runnable show) {
        return List.of(new Command(texts, "trialview.command.show", CommandMenu.VIEW, 2, null, show));
    }
}
