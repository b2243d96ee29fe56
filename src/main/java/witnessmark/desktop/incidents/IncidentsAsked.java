package witnessmark.desktop.incidents;

import java.util.function.Consumer;
import witnessmark.logbook.sheets.Prefilled;

/**
 * What the page leads to.
 *
 * @param report shows the sheet that reports an incident
 * @param write shows a sheet about an incident
 * @param correct opens something written on its sheet
 * @param open shows an incident of the place
 */
public record IncidentsAsked(
        Runnable report, Consumer<Prefilled> write, Consumer<String> correct, Consumer<String> open) {}
