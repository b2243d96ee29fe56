package witnessmark.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Calibration;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Tool;
import witnessmark.ledger.result.JointDoubt;
import witnessmark.quantity.Moment;

/**
 * Which joints stand under doubt as of the ledger's day: tightened with a torque wrench between the calibration before and
 * one that found it outside its tolerance. A joint is dealt with once it was tightened again, once all those fasteners
 * came off, or once somebody accepted it as it is and named the wrench. While an engine is open it is apart instead.
 */
public final class JointDoubts {
    private final LifeLedger ledger;
    private final Facts facts;
    private final Map<Id<Engine>, List<JointDoubt>> byEngine = new LinkedHashMap<>();

    public JointDoubts(LifeLedger ledger) {
        this.ledger = ledger;
        this.facts = ledger.facts();
        LocalDate today = ledger.asOf().day();
        facts
                .of(Calibration.class)
                .where(each ->
                        Calibrations.isOutside(facts, each) && !each.day().isAfter(today))
                .stream()
                .sorted(Comparator.comparing(
                                (Entry<Calibration> each) -> each.fact().day())
                        .thenComparing(Entry::id))
                .forEach(this::add);
    }

    /** Those of an engine, the first found first. */
    public List<JointDoubt> of(Id<Engine> engine) {
        return List.copyOf(byEngine.getOrDefault(engine, List.of()));
    }

    /** Whether what was accepted as it is names a wrench. */
    public static boolean names(String accepted, String mark) {
        return Pattern.compile(
                        "(?<![\\p{L}\\p{N}])" + Pattern.quote(mark) + "(?![\\p{L}\\p{N}])", Pattern.CASE_INSENSITIVE)
                .matcher(accepted)
                .find();
    }

    private void add(Entry<Calibration> found) {
        Entry<Tool> tool = facts.of(Tool.class).find(found.fact().tool()).orElse(null);
        if (tool == null) {
            return;
        }
        Map<Id<Engine>, List<Entry<Joint>>> left = new LinkedHashMap<>();
        for (Entry<Joint> joint : Calibrations.tightenedBefore(facts, found).joints()) {
            Joint fact = joint.fact();
            boolean dealt = again(joint) || cameOff(fact) || accepted(fact, tool.fact(), found.fact()) || open(fact);
            if (!dealt) {
                left.computeIfAbsent(fact.engine(), engine -> new ArrayList<>()).add(joint);
            }
        }
        left.forEach((engine, joints) -> byEngine.computeIfAbsent(engine, id -> new ArrayList<>())
                .add(new JointDoubt(tool, found, engine, joints)));
    }

    /** Tightened later: from slack, or by the same stage. Where it was not said which, all of them were. */
    private boolean again(Entry<Joint> joint) {
        Joint one = joint.fact();
        return !facts.of(Joint.class)
                .where(other -> other.engine().equals(one.engine())
                        && other.fasteners() == one.fasteners()
                        && other.at().isAfter(one.at())
                        && ledger.asOf().counts(other.at())
                        && (other.which().isBlank()
                                || other.which()
                                        .strip()
                                        .equalsIgnoreCase(one.which().strip()))
                        && (other.cycle()
                                || other.stage()
                                        .strip()
                                        .equalsIgnoreCase(one.stage().strip())))
                .isEmpty();
    }

    private boolean cameOff(Joint joint) {
        List<Entry<Fitment>> there = facts.of(Fitment.class)
                .where(fitment -> joint.engine().equals(fitment.engine())
                        && !fitment.from().isAfter(joint.at())
                        && (fitment.to() == null || fitment.to().isAfter(joint.at()))
                        && kind(fitment.part()) == joint.fasteners());
        return !there.isEmpty()
                && there.stream()
                        .map(fitment -> fitment.fact().to())
                        .allMatch(off -> off != null && ledger.asOf().counts(off));
    }

    private boolean accepted(Joint joint, Tool tool, Calibration found) {
        return !facts.of(Concession.class)
                .where(each -> joint.engine().equals(each.engine())
                        && (each.part() == null || kind(each.part()) == joint.fasteners())
                        && !each.at().day().isBefore(found.day())
                        && ledger.asOf().counts(each.at())
                        && names(each.what(), tool.mark()))
                .isEmpty();
    }

    /** Whether the engine was opened since and is not closed yet. */
    private boolean open(Joint joint) {
        return !facts.of(Build.class)
                .where(build -> build.engine().equals(joint.engine())
                        && build.opened().isAfter(joint.at())
                        && ledger.asOf().counts(build.opened())
                        && isOpen(build.closed()))
                .isEmpty();
    }

    private boolean isOpen(@Nullable Moment closed) {
        return closed == null || !ledger.asOf().counts(closed);
    }

    private PartKind kind(Id<Part> part) {
        return facts.of(PartDesign.class)
                .get(facts.of(Part.class).get(part).design())
                .kind();
    }
}
