package witnessmark.desktop.beforewego;

import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.SeamState;

/**
 * One mark of one thing, in words, as a row shows it.
 *
 * @param id what makes it the same row as before: the reason and what it is on
 * @param state the mark
 * @param title what it falls on: "Valve springs VS-03"
 * @param where where that is: "Engine K03, car 41"
 * @param place the same short: "K03, car 41"
 * @param life what the strip draws, or null when a strip says nothing
 * @param ran what was run, already formatted: "12.87 h"
 * @param limit the limit, already formatted: "12 h", or that there is none
 * @param figures what was run and against what: "12.87 h run, limit 12 h (builder)"
 * @param left how far over or to the limit: "0.9 h over now"
 * @param due what falls due: "renew valve springs"
 * @param dueWords the same with when it was last done or what is missing
 * @param share what is used of the limit, 1 at the limit, told running at its high end; null when there is no limit
 * @param record the text of the identity it opens
 * @param build whether that is a build, which opens its sheet
 * @param tip where the limit is written down
 * @param about the whole row for screen readers, its state's word aside
 */
public record MarkLine(
        String id,
        SeamState state,
        String title,
        String where,
        String place,
        @Nullable Life life,
        String ran,
        String limit,
        String figures,
        String left,
        String due,
        String dueWords,
        @Nullable Double share,
        String record,
        boolean build,
        String tip,
        String about) {}
