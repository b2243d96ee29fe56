package witnessmark.desktop.shelf;

import java.util.function.Consumer;
import witnessmark.logbook.sheets.Prefilled;

/**
 * What the page leads to.
 *
 * @param page opens the page of a part, by the text form of its identity
 * @param correct opens a part or a batch on its sheet, by the text form of its identity
 * @param write opens a sheet that is about a part or a batch
 * @param fitPart opens the sheet on which a part is fitted
 * @param newStock opens the sheet on which a batch is put on the shelf
 */
public record ShelfAsked(
        Consumer<String> page,
        Consumer<String> correct,
        Consumer<Prefilled> write,
        Runnable fitPart,
        Runnable newStock) {}
