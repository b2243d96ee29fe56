package witnessmark.ledger.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Position;
import witnessmark.domain.Zone;

/**
 * A position that a build brought within reach.
 *
 * @param position where
 * @param zone the first of the zones opened that brings it within reach
 * @param out what was taken out of it in this build, the first first
 * @param in what is in it at the end of the build, or on the day looked at while that is open; null when nothing is
 * @param fresh whether that went in in this build
 * @param before whether anything was ever in it before
 * @param running what is in it had run, or null when nothing is
 * @param worst how what is in it stands, the worst first; null when nothing is or nothing holds it
 */
public record BuildPosition(
        Entry<Position> position,
        Zone zone,
        List<Entry<Fitment>> out,
        @Nullable Entry<Fitment> in,
        boolean fresh,
        boolean before,
        @Nullable Life running,
        @Nullable Mark worst) {
    public BuildPosition {
        out = List.copyOf(out);
    }

    /** Whether something came out or went in in this build. */
    public boolean touched() {
        return fresh || !out.isEmpty();
    }

    /** Whether something belongs there and nothing is: an engine needs it, or something was there before. */
    public boolean empty() {
        return in == null && (position.fact().needed() || before);
    }
}
