package witnessmark.desktop.engines;

import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.SeamState;
import witnessmark.quantity.Moment;

/**
 * One position of a build as a row shows it.
 *
 * @param id the text form of the position's identity
 * @param part the text form of the part's identity, or null when it is empty
 * @param ordinal where it stands in the build
 * @param position its name
 * @param mark the part's mark, or that none is fitted
 * @param design the part's design, with the members of a set
 * @param since when it was fitted, already formatted; empty when the position is empty
 * @param from when it was fitted, or null
 * @param ran what was run against the limit, and since when unless it is the whole life, or its running time where there
 *     is none; null when it is empty
 * @param limit the limit; empty when the position is empty
 * @param strip what the strip draws
 * @param state the mark
 * @param left how far over or to the limit, or what is missing
 * @param tip the limit in full
 */
record BuildLine(
        String id,
        @Nullable String part,
        int ordinal,
        String position,
        String mark,
        String design,
        String since,
        @Nullable Moment from,
        @Nullable Shown ran,
        String limit,
        Life strip,
        SeamState state,
        String left,
        String tip) {}
