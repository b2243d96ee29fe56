package witnessmark.desktop.faces;

import java.util.function.Consumer;
import witnessmark.desktop.form.SheetTools;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;

/**
 * What the faces stand on, put together by the launcher.
 *
 * @param book the open logbook
 * @param ids identities for what is written
 * @param window what can be asked of the window around it
 * @param tools texts, tasks and settings
 * @param measures figures as shown, in the team's units
 * @param days day or month first in a date
 * @param undo takes the last change back and says so
 * @param write opens a sheet, and comes back from it
 * @param print asks where to write the page of the face in sight
 */
public record FacesContext(
        Desk book,
        Ids ids,
        witnessmark.desktop.shell.Desk window,
        SheetTools tools,
        Measures measures,
        DayOrder days,
        Runnable undo,
        Consumer<Prefilled> write,
        Runnable print) {}
