package witnessmark.desktop.cases;

import java.util.function.Consumer;
import java.util.function.Supplier;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.proof.WeighFinding;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Measures;

/**
 * What the investigation on a page works with.
 *
 * @param window the window's desk
 * @param view the logbook as of the day looked at; asked off the event thread
 * @param weigh writes how findings speak
 * @param undo takes back what was written last
 * @param write shows a sheet about an incident
 * @param correct opens something written on its sheet
 */
public record CaseDoing(
        SheetTools tools,
        Measures measures,
        Desk window,
        Supplier<View> view,
        WeighFinding weigh,
        Runnable undo,
        Consumer<Prefilled> write,
        Consumer<String> correct) {}
