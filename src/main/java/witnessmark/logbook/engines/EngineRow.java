package witnessmark.logbook.engines;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.quantity.Moment;

/**
 * One engine of the list.
 *
 * @param engine which one
 * @param design what it is built to
 * @param inCar the car it is in and since when, or null when in none
 * @param car the name of that car, or null
 * @param open the build it is opened for, or null while it is closed
 * @param first when its first entry happened, when that is after the day looked at: then nothing is known yet; or null
 * @param running its whole running time
 * @param rebuild its last closed build that opened the bottom end, or null when none is written down
 * @param sinceRebuild its running time since that build; its whole life when there was none
 * @param head the head on it, or null when none is fitted
 * @param fitted how many positions are filled
 * @param empty how many needed positions are empty
 * @param worst what stands worst on it, or null when nothing is held against it
 * @param unproven its track repairs that nobody measured
 * @param noLimit how many of its parts have nothing they are held against
 */
public record EngineRow(
        Entry<Engine> engine,
        EngineDesign design,
        @Nullable Entry<EngineInCar> inCar,
        @Nullable String car,
        @Nullable Entry<Build> open,
        @Nullable Moment first,
        Life running,
        @Nullable Entry<Build> rebuild,
        Life sinceRebuild,
        @Nullable HeadRow head,
        int fitted,
        int empty,
        @Nullable MarkOn worst,
        List<UnprovenBuild> unproven,
        int noLimit) {
    public EngineRow {
        unproven = List.copyOf(unproven);
    }

    /** Whether something is fitted and something needed is not. */
    public boolean incomplete() {
        return fitted > 0 && empty > 0;
    }
}
