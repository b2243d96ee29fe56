package witnessmark.desktop.shelf;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Moment;

/**
 * One part or set as a row shows it.
 *
 * @param id the text form of its identity
 * @param state how it stands worst
 * @param mark as marked
 * @param kind what kind of part
 * @param design which design, and of which batch
 * @param where where it is
 * @param since since when; empty when nothing says so
 * @param from the same to sort by
 * @param ran its whole running time
 * @param amount the same in milliseconds, told running at its high end
 * @param counted what else its limits count, each with its limit; empty when they count nothing else
 * @param sinceWork what it ran since it was skimmed or the engine rebuilt; empty where neither starts a count
 * @param amountSince the same in milliseconds, or null
 * @param worst how it stands worst and why
 * @param note why it is there, what it is kept for, what was noted
 * @param shownUnder for which choices of where it is shown
 * @param sheets what can be written down about it
 * @param onTrial whether its design is in a trial
 */
record ShelfLine(
        String id,
        SeamState state,
        String mark,
        String kind,
        String design,
        String where,
        String since,
        @Nullable Moment from,
        String ran,
        long amount,
        String counted,
        String sinceWork,
        @Nullable Long amountSince,
        String worst,
        String note,
        Set<Whereabout> shownUnder,
        List<Prefilled> sheets,
        boolean onTrial) {
    ShelfLine {
        shownUnder = Set.copyOf(shownUnder);
        sheets = List.copyOf(sheets);
    }
}
