package witnessmark.desktop.bench;

import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Ids;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * What the measuring bench stands on, put together by the launcher.
 *
 * @param book the open logbook
 * @param ids identities for what is written
 * @param window what can be asked of the window around it
 * @param tasks where work off the event thread goes
 * @param measures figures as shown, in the team's units
 * @param undo takes the last change back and says so
 */
public record BenchContext(
        Desk book,
        Ids ids,
        witnessmark.desktop.shell.Desk window,
        Tasks tasks,
        Texts texts,
        Measures measures,
        Runnable undo) {}
