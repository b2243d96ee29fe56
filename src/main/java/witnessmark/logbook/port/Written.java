package witnessmark.logbook.port;

import java.util.List;
import java.util.UUID;
import witnessmark.domain.Facts;
import witnessmark.domain.history.Amendment;

/**
 * A change that is on the disk.
 *
 * @param change what undo is asked to take back
 * @param amendments what was written
 * @param facts everything as it stands now
 */
public record Written(UUID change, List<Amendment> amendments, Facts facts) {
    public Written {
        amendments = List.copyOf(amendments);
    }
}
