package witnessmark.ledger.result;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.PartKind;

/**
 * What a tool tightened after one calibration, as it is written down.
 *
 * @param since the day of that calibration, or null when it was never calibrated before
 * @param joints every stage of it, in the order of time
 */
public record TightenedWith(@Nullable LocalDate since, List<Entry<Joint>> joints) {
    /** The same fasteners of an engine on one day, in however many stages and turns of the hand. */
    private record Group(Id<Engine> engine, PartKind fasteners, String which, LocalDate day) {
        static Group of(Joint joint) {
            return new Group(
                    joint.engine(),
                    joint.fasteners(),
                    joint.which().strip().toLowerCase(Locale.ROOT),
                    joint.at().day());
        }
    }

    public TightenedWith {
        joints = List.copyOf(joints);
    }

    /** How many groups of fasteners: the same ones of an engine on one day are one, however many stages they took. */
    public int groups() {
        return (int)
                joints.stream().map(joint -> Group.of(joint.fact())).distinct().count();
    }

    /** On which engines, the first tightened first. */
    public List<Id<Engine>> engines() {
        return joints.stream().map(joint -> joint.fact().engine()).distinct().toList();
    }
}
