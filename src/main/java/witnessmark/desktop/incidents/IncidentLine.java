package witnessmark.desktop.incidents;

import java.util.List;
import witnessmark.desktop.form.SeamState;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Moment;

/**
 * One incident of the list, in words.
 *
 * @param id the text form of its identity
 * @param mark the short name it goes by
 * @param title what it was
 * @param on car and engine
 * @param day when it happened
 * @param at when it happened
 * @param stands open and for how long, or closed
 * @param state open asks for something, closed does not
 * @param cost what it cost together
 * @param amount the same in minor units
 * @param engine of which engine, the text form of its identity; empty for none
 * @param sheets what can be written of it
 */
record IncidentLine(
        String id,
        String mark,
        String title,
        String on,
        String day,
        Moment at,
        String stands,
        SeamState state,
        String cost,
        long amount,
        String engine,
        List<Prefilled> sheets) {
    IncidentLine {
        sheets = List.copyOf(sheets);
    }
}
