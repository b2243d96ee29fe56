package witnessmark.logbook.money;

import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.Switches;

/**
 * Which season is asked about, and how.
 *
 * @param season its name; empty for that of the day looked at
 * @param switches what totals take in
 * @param by what the bars put failures under
 */
public record SeasonAsked(String season, Switches switches, BarsBy by) {
    /** The season of the day, with the usual total, incident by incident. */
    public static final SeasonAsked USUAL = new SeasonAsked("", Switches.USUAL, BarsBy.INCIDENT);
}
