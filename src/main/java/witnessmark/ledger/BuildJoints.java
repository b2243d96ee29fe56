package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Joint;
import witnessmark.domain.PartKind;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.JointGroup;

/**
 * The groups of fasteners a build tightens: those written for it, and those that what was opened asks for. A head that was
 * off asks for its studs, big ends that were apart for their bolts (common practice, no source); anything else is asked
 * for as the engine's builds before had it. Of those only the names are taken, never a value.
 */
public final class BuildJoints {
    private static final Set<PartKind> ON_THE_RODS = EnumSet.of(
            PartKind.CRANK,
            PartKind.RODS,
            PartKind.ROD_BOLTS,
            PartKind.PISTONS,
            PartKind.RINGS,
            PartKind.BIG_END_SHELLS);

    private final LifeLedger ledger;

    public BuildJoints(LifeLedger ledger) {
        this.ledger = ledger;
    }

    /** One group of fasteners by what it is called. */
    private record Named(PartKind fasteners, String which) {
        static Named of(Joint joint) {
            return new Named(joint.fasteners(), joint.which().strip().toLowerCase(java.util.Locale.ROOT));
        }
    }

    /**
     * Those not tightened first, each in the order it was tightened last.
     *
     * @param positions those of the build
     */
    public List<JointGroup> of(Entry<Build> build, List<BuildPosition> positions) {
        BuildSpan span = BuildSpan.of(ledger, build);
        Map<Named, List<Entry<Joint>>> now = new LinkedHashMap<>();
        inOrder(joint -> span.tightened(joint))
                .forEach(joint -> now.computeIfAbsent(Named.of(joint.fact()), named -> new ArrayList<>())
                        .add(joint));
        Map<Named, JointGroup> all = new LinkedHashMap<>();
        for (Entry<Joint> joint : before(build, span)) {
            Named named = Named.of(joint.fact());
            Entry<Build> earlier = earlier(joint.fact());
            if (now.containsKey(named) || asks(build.fact(), positions, joint.fact(), earlier)) {
                all.put(
                        named,
                        new JointGroup(
                                named.fasteners(), joint.fact().which(), now.getOrDefault(named, List.of()), earlier));
            }
        }
        now.forEach((named, joints) -> all.putIfAbsent(
                named, new JointGroup(named.fasteners(), joints.get(0).fact().which(), joints, null)));
        for (PartKind kind : List.of(PartKind.HEAD_STUDS, PartKind.ROD_BOLTS)) {
            if (asks(build.fact(), positions, kind)
                    && positions.stream()
                            .anyMatch(each -> each.position().fact().kind() == kind)
                    && all.keySet().stream().noneMatch(named -> named.fasteners() == kind)) {
                all.put(new Named(kind, ""), new JointGroup(kind, "", List.of(), null));
            }
        }
        return all.values().stream()
                .sorted(Comparator.comparing(group -> !group.tightened().isEmpty()))
                .toList();
    }

    /** What was tightened in the last build before in which any of its kind was. */
    private List<Entry<Joint>> before(Entry<Build> build, BuildSpan span) {
        List<Entry<Joint>> all =
                inOrder(joint -> joint.engine().equals(build.fact().engine())
                        && joint.build() != null
                        && !joint.build().equals(build.id())
                        && joint.at().isBefore(span.from()));
        return all.stream()
                .filter(joint -> all.stream()
                        .filter(other ->
                                other.fact().fasteners() == joint.fact().fasteners())
                        .reduce((earlier, later) -> later)
                        .map(last -> java.util.Objects.equals(
                                last.fact().build(), joint.fact().build()))
                        .orElse(false))
                .toList();
    }

    private boolean asks(Build build, List<BuildPosition> positions, Joint before, @Nullable Entry<Build> earlier) {
        boolean outside = reaches(EnumSet.noneOf(Zone.class), before.fasteners());
        if (outside) {
            return earlier != null && build.zones().containsAll(earlier.fact().zones());
        }
        return reaches(build.zones(), before.fasteners()) && asks(build, positions, before.fasteners());
    }

    private static boolean asks(Build build, List<BuildPosition> positions, PartKind fasteners) {
        if (fasteners == PartKind.HEAD_STUDS) {
            return build.zones().contains(Zone.HEAD);
        }
        Set<PartKind> holds = fasteners == PartKind.ROD_BOLTS ? ON_THE_RODS : EnumSet.of(fasteners);
        return positions.stream()
                .anyMatch(each ->
                        each.touched() && holds.contains(each.position().fact().kind()));
    }

    /** Without any zone: whether nothing has to be opened for it. */
    private static boolean reaches(Set<Zone> zones, PartKind kind) {
        return zones.isEmpty()
                ? EnumSet.allOf(Zone.class).stream().allMatch(zone -> zone.reaches(kind))
                : zones.stream().anyMatch(zone -> zone.reaches(kind));
    }

    private @Nullable Entry<Build> earlier(Joint joint) {
        return joint.build() == null
                ? null
                : ledger.facts().of(Build.class).find(joint.build()).orElse(null);
    }

    private List<Entry<Joint>> inOrder(java.util.function.Predicate<Joint> asked) {
        return ledger
                .facts()
                .of(Joint.class)
                .where(joint -> ledger.asOf().counts(joint.at()) && asked.test(joint))
                .stream()
                .sorted(Comparator.comparing(joint -> joint.fact().at()))
                .toList();
    }
}
