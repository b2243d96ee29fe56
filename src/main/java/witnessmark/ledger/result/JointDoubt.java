package witnessmark.ledger.result;

import java.util.List;
import java.util.Objects;
import witnessmark.domain.Calibration;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Tool;

/**
 * Joints of an engine tightened with a wrench that was found outside its tolerance afterwards, and with which nobody has
 * dealt since.
 *
 * @param tool the wrench
 * @param calibration when that was found
 * @param engine which engine
 * @param joints what it tightened there, in the order of time; at least one
 */
public record JointDoubt(Entry<Tool> tool, Entry<Calibration> calibration, Id<Engine> engine, List<Entry<Joint>> joints)
        implements MarkReason {
    public JointDoubt {
        joints = List.copyOf(joints);
    }

    /** By how much it read wrong, in hundredths of a percent, reading less true value. */
    public int asFound() {
        return Objects.requireNonNull(calibration.fact().asFound());
    }

    /** Nobody knows how tight they are. */
    @Override
    public MarkState state() {
        return MarkState.NOT_KNOWN;
    }
}
