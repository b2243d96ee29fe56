package witnessmark.desktop.traces;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.task.Tasks;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.LoggerFiles;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * What bringing traces in stands on, put together by the launcher.
 *
 * @param book the open logbook
 * @param bringIn reads files and writes what is taken
 * @param files where they lie
 * @param window what can be asked of the window around it
 * @param tools texts, tasks, settings
 * @param measures figures as shown, in the team's units
 * @param watch looks at the folder that is watched
 * @param choose asks for a file
 * @param folder asks for a folder to be watched
 * @param asked what the page leads to
 */
public record TracesContext(
        Desk book,
        BringInTrace bringIn,
        LoggerFiles files,
        witnessmark.desktop.shell.Desk window,
        SheetTools tools,
        Measures measures,
        TraceWatch watch,
        Supplier<Optional<Path>> choose,
        Supplier<Optional<Path>> folder,
        Asked asked) {
    /** What the page leads to. */
    public interface Asked {
        /** Puts the page up. */
        void show(Aside page);

        /** Takes it away again. */
        void leave();

        /** Opens a written run. */
        void run(Id<Run> run);

        /**
         * Opens the sheet of a new run filled with what a part of a trace knows; it is brought in with the run.
         *
         * @return whether it is; not while another run is begun on the sheet
         */
        boolean log(BroughtTrace trace, int part, String note);

        /** Takes a change back, as long as it is the last. */
        void undo(UUID change);
    }

    Texts texts() {
        return tools.texts();
    }

    Tasks tasks() {
        return tools.tasks();
    }
}
