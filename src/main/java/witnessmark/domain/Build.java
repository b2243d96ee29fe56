package witnessmark.domain;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * An engine opened, worked on and closed.
 *
 * @param engine which engine
 * @param number build 1, 2 … of that engine
 * @param zones what was opened, at least one
 * @param opened when it was opened
 * @param closed when it was closed, or null while it is open
 * @param signedBy who signed it, empty while unsigned
 * @param note what it was for
 */
public record Build(
        Id<Engine> engine,
        int number,
        Set<Zone> zones,
        Moment opened,
        @Nullable Moment closed,
        String signedBy,
        String note)
        implements Fact {
    public Build {
        zones = Collections.unmodifiableSet(EnumSet.copyOf(zones));
        if (closed != null && closed.isBefore(opened)) {
            throw new IllegalArgumentException("a build closes after it opens");
        }
    }

    @Override
    public String knownAs() {
        return Integer.toString(number);
    }

    @Override
    public Id<?> knownWithin() {
        return engine;
    }

    @Override
    public Moment happened() {
        return opened;
    }
}
