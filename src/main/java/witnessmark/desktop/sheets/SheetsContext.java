package witnessmark.desktop.sheets;

import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Settings;
import witnessmark.logbook.port.StartingValues;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * What the sheets stand on, put together by the launcher.
 *
 * @param book the open logbook
 * @param ids identities for what is written
 * @param window what can be asked of the window around them
 * @param tasks where work off the event thread goes
 * @param measures figures as shown, in the team's units
 * @param days day or month first in a date of figures
 * @param settings where it is remembered how people like the list of what is written
 * @param startingValues what limits usually start from
 * @param undo takes the last change back and says so
 */
public record SheetsContext(
        Desk book,
        Ids ids,
        witnessmark.desktop.shell.Desk window,
        Tasks tasks,
        Texts texts,
        Measures measures,
        DayOrder days,
        Settings settings,
        StartingValues startingValues,
        Runnable undo) {}
