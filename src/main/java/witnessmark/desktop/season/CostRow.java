package witnessmark.desktop.season;

import java.time.LocalDate;

/**
 * A line behind a figure.
 *
 * @param record what it opens: the text form of a cost's identity, or of an incident's where only a share of it counts
 * @param day when, in words
 * @param at the same to sort by
 * @param incident whose failure it is of
 * @param what what it was for
 * @param event for which event; empty for none
 * @param car for which car; empty for none
 * @param kind what kind of cost
 * @param column where it is counted
 * @param whom who was paid, and the invoice
 * @param paid for all of the line
 * @param back of that, what came back
 * @param kept of that, what was kept for later
 * @param amount how much of it counts here
 */
record CostRow(
        String record,
        String day,
        LocalDate at,
        String incident,
        String what,
        String event,
        String car,
        String kind,
        String column,
        String whom,
        Amount paid,
        Amount back,
        Amount kept,
        Amount amount) {}
