/**
 * What failures cost, and the season in money: begin with {@link witnessmark.logbook.money.SeeSeason} and {@link
 * witnessmark.logbook.money.SeeIncident}.
 */
@NullMarked
package witnessmark.logbook.money;

import org.jspecify.annotations.NullMarked;
