package witnessmark.desktop.season;

import java.util.function.Consumer;
import witnessmark.logbook.sheets.Prefilled;

/**
 * What the page leads to.
 *
 * @param correct opens what is written on its sheet, by the text form of its identity
 * @param write opens a new sheet, with what is chosen there
 * @param export asks where to write the season's tables
 * @param print asks where to write the season's pages
 */
public record SeasonLeads(Consumer<String> correct, Consumer<Prefilled> write, Runnable export, Runnable print) {}
