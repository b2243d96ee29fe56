package witnessmark.desktop.shelf;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;
import witnessmark.logbook.sheets.Prefilled;

/**
 * One batch on the shelf as a row shows it.
 *
 * @param id the text form of its identity
 * @param state over when it is past its printed date or the design runs short, within when not
 * @param batch its word
 * @param design what it is
 * @param onShelf how many lie there
 * @param kept how many of them open jobs want
 * @param free how many may be taken for something else
 * @param leastText how many of the design the team wants on the shelf, or that it said none
 * @param least the same to sort by, or null
 * @param stands what the design is short of, what is on order, that the batch is past its date; else that there is enough
 * @param useBy the printed date; empty when there is none
 * @param day the same to sort by
 * @param lies where it lies
 * @param move the sheet on which items come or go
 */
record StockLine(
        String id,
        SeamState state,
        String batch,
        String design,
        int onShelf,
        int kept,
        int free,
        String leastText,
        @Nullable Integer least,
        String stands,
        String useBy,
        @Nullable LocalDate day,
        String lies,
        Prefilled move) {}
