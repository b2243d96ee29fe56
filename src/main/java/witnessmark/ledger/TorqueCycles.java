package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.Stay;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** How often fasteners were tightened from slack: by the joints of the engine they sat in. */
final class TorqueCycles {
    private final LifeLedger ledger;
    private final Map<Id<Engine>, List<Joint>> joints = new HashMap<>();

    TorqueCycles(LifeLedger ledger) {
        this.ledger = ledger;
        ledger.facts()
                .of(Joint.class)
                .where(joint -> joint.cycle() && ledger.asOf().counts(joint.at()))
                .forEach(entry -> joints.computeIfAbsent(entry.fact().engine(), engine -> new ArrayList<>())
                        .add(entry.fact()));
    }

    /**
     * The cycles of a part, in whole counts.
     *
     * @param since only those later than this, or null for its life with what it came with
     */
    Life of(Id<Part> part, @Nullable Moment since) {
        Id<PartDesign> design = ledger.facts().of(Part.class).get(part).design();
        PartKind kind = ledger.facts().of(PartDesign.class).get(design).kind();
        long cycles = 0;
        for (Stay stay : ledger.stays(part)) {
            Id<Engine> engine = stay.fitment().fact().engine();
            if (engine != null) {
                cycles += joints.getOrDefault(engine, List.of()).stream()
                        .filter(joint -> joint.fasteners() == kind
                                && during(stay, joint.at())
                                && (since == null || joint.at().isAfter(since)))
                        .count();
            }
        }
        Life counted = new Life(Counter.TORQUE_CYCLES, cycles, 0, 0, 0, 0, false, 0, 0);
        return since == null ? ledger.carriedIn(part, Counter.TORQUE_CYCLES).plus(counted) : counted;
    }

    /** From the moment it went in until just before it came off: what tightened its successor is not its own. */
    private static boolean during(Stay stay, Moment at) {
        return !at.isBefore(stay.from()) && (stay.to() == null || at.isBefore(stay.to()));
    }
}
