package witnessmark.desktop.season;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.sheets.Prefilled;

/**
 * A decision as a row shows it.
 *
 * @param id the text form of its identity
 * @param day when it was put
 * @param at the same to sort by
 * @param question what was to be decided
 * @param taken what was decided, and by whom; that it is open
 * @param others the other ways, with their money and hours
 * @param cameOf what came of it
 * @param sheet what is to be written of it next, or null when nothing is: then it opens itself
 * @param asked who was asked, or that nobody was
 */
record DecisionLine(
        String id,
        String day,
        LocalDate at,
        String question,
        String taken,
        String others,
        String cameOf,
        @Nullable Prefilled sheet,
        String asked) {}
