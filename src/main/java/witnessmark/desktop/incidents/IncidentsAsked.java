package witnessmark.desktop.incidents;

import java.util.function.BiConsumer;
import java.util.function.Consumer;
import witnessmark.logbook.sheets.Prefilled;

/**
 * What the page leads to.
 *
 * @param report shows the sheet that reports an incident
 * @param write shows a sheet about an incident, which goes back to it: told the sheet and the incident
 * @param correct opens something written on its sheet, to go back to an incident: told what, and the incident
 * @param open shows an incident of the place
 */
public record IncidentsAsked(
        Runnable report,
        BiConsumer<Prefilled, String> write,
        BiConsumer<String, String> correct,
        Consumer<String> open) {}
