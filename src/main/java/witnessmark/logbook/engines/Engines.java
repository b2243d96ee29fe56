package witnessmark.logbook.engines;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;

/**
 * All engines and heads as of a day.
 *
 * @param day the day looked at
 * @param zone the team's zone
 * @param readOnly whether the day is an earlier one
 * @param engines by number
 * @param heads by mark, those off an engine too
 * @param offEngines every other part that is in no engine, by mark
 * @param sinceRebuild a curve for each engine that ran or was built, in the order of the engines
 * @param sinceSkim a curve for each head that ran or was skimmed, in the order of the heads
 * @param events every event up to the day, by its first day
 */
public record Engines(
        LocalDate day,
        ZoneId zone,
        boolean readOnly,
        List<EngineRow> engines,
        List<HeadRow> heads,
        List<PartRow> offEngines,
        List<Curve> sinceRebuild,
        List<Curve> sinceSkim,
        List<Entry<Event>> events) {
    public Engines {
        engines = List.copyOf(engines);
        heads = List.copyOf(heads);
        offEngines = List.copyOf(offEngines);
        sinceRebuild = List.copyOf(sinceRebuild);
        sinceSkim = List.copyOf(sinceSkim);
        events = List.copyOf(events);
    }
}
