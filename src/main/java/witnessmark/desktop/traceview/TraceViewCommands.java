package witnessmark.desktop.traceview;

import java.util.List;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.wording.Texts;

/** What the menus offer of traces. */
public final class TraceViewCommands {
    private TraceViewCommands() {}

    /**
     * All of them.
     *
     * @param show shows the trace of the run in view, else of the engine in view, else the newest
     * @param print prints what is in sight of the trace that is shown
     */
    public static List<Command> of(Texts texts, Runnable show, Runnable print) {
        return List.of(
                new Command(texts, "traceview.command.show", CommandMenu.VIEW, 2, null, show),
                new Command(texts, "tracesheet.command.print", CommandMenu.LOGBOOK, 3, null, print));
    }
}
