package witnessmark.logbook.money;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.LostLife;
import witnessmark.cost.result.SeasonPieces;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.quantity.Moment;

/**
 * What a season's pages are made of.
 *
 * @param logbook the team's name, or the name of the file while no team is written down
 * @param facts everything written
 * @param day the day looked at
 * @param page what the screen shows of the same season
 * @param bars what failures went on, put together in each way there is
 * @param pieces what its figures are sums of
 * @param lost by incident, prices of parts split by the life they had run: already counted, never added
 * @param printed when the pages were made, by the clocks of the team's zone
 */
public record SeasonSheetFacts(
        String logbook,
        Facts facts,
        LocalDate day,
        SeasonPage page,
        Map<BarsBy, List<Bar>> bars,
        SeasonPieces pieces,
        Map<Id<Incident>, List<LostLife>> lost,
        Moment printed) {
    public SeasonSheetFacts {
        bars = Map.copyOf(bars);
        lost = Map.copyOf(lost);
    }
}
