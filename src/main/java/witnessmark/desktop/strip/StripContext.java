package witnessmark.desktop.strip;

import java.util.function.Consumer;
import witnessmark.desktop.form.SheetTools;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Ids;
import witnessmark.wording.Measures;

/**
 * What the strip report stands on, put together by the launcher.
 *
 * @param book the open logbook
 * @param ids identities for what is written
 * @param window what can be asked of the window around it
 * @param tools texts, tasks and settings
 * @param measures figures as shown, in the team's units
 * @param undo takes the last change back and says so
 * @param correct opens something written on its sheet, and comes back from it
 */
public record StripContext(
        Desk book,
        Ids ids,
        witnessmark.desktop.shell.Desk window,
        SheetTools tools,
        Measures measures,
        Runnable undo,
        Consumer<String> correct) {}
