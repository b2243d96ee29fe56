package witnessmark.logbook.engines;

import java.time.LocalDate;
import java.util.List;
import witnessmark.ledger.result.Life;
import witnessmark.study.result.KindTrends;

/**
 * One engine in full as of a day.
 *
 * @param day the day looked at
 * @param row what the list says of it
 * @param lives one for each counter that runs feed, in the order of the counters
 * @param sinceRebuild the same since its last rebuild
 * @param build every position of its design in the order a build is read out, empty ones that are needed too
 * @param line what happened to it, in the order of time
 * @param trends where its readings and those of the parts in it are going
 */
public record EngineSheet(
        LocalDate day,
        EngineRow row,
        List<Life> lives,
        List<Life> sinceRebuild,
        List<FittedPart> build,
        List<Happening> line,
        List<KindTrends> trends) {
    public EngineSheet {
        lives = List.copyOf(lives);
        sinceRebuild = List.copyOf(sinceRebuild);
        build = List.copyOf(build);
        line = List.copyOf(line);
        trends = List.copyOf(trends);
    }
}
