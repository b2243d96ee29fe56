package witnessmark.desktop.trials;

import witnessmark.desktop.form.SeamState;
import witnessmark.quantity.Moment;

/**
 * A finding on a part of the trial, or what an incident did to one, as a row shows it.
 *
 * @param record the text form of its identity: a finding's or an incident's
 * @param incident whether it is an incident's
 * @param at when, to sort by
 * @param day when
 * @param side tried or usual
 * @param part the mark of the part
 * @param what what was found or done
 * @param state over where it failed
 */
record FoundLine(
        String record,
        boolean incident,
        Moment at,
        String day,
        String side,
        String part,
        String what,
        SeamState state) {}
