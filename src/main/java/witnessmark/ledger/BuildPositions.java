package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.Mark;
import witnessmark.quantity.Counter;

/** The positions a build brought within reach, each once: what came out of it, and what is in it. */
public final class BuildPositions {
    private static final Comparator<BuildPosition> IN_TURN = Comparator.comparing(BuildPosition::zone)
            .thenComparing(each -> each.position().fact().ordinal())
            .thenComparing(each -> each.position().id());

    private final LifeLedger ledger;
    private final Marks marks;

    public BuildPositions(LifeLedger ledger, Marks marks) {
        this.ledger = ledger;
        this.marks = marks;
    }

    /**
     * Zone by zone, and within one in the order in which the engine is read out.
     *
     * @param build as written, or as it is to be written
     */
    public List<BuildPosition> of(Entry<Build> build) {
        BuildSpan span = BuildSpan.of(ledger, build);
        Id<Engine> engine = build.fact().engine();
        Map<Id<Position>, Entry<Fitment>> there = ledger.fittedAt(engine, span.to());
        List<Entry<Fitment>> ever = ledger.facts().of(Fitment.class).where(fitment -> engine.equals(fitment.engine()));
        Id<EngineDesign> design = ledger.facts().of(Engine.class).get(engine).design();
        List<BuildPosition> all = new ArrayList<>();
        for (Entry<Position> position : ledger.facts().of(Position.class).where(each -> design.equals(each.design()))) {
            List<Entry<Fitment>> of = ever.stream()
                    .filter(fitment -> fitment.fact().position().equals(position.id()))
                    .toList();
            List<Entry<Fitment>> out = of.stream()
                    .filter(fitment -> span.tookOut(fitment.fact()))
                    .sorted(Comparator.comparing(fitment -> fitment.fact().from()))
                    .toList();
            Entry<Fitment> in = there.get(position.id());
            zone(build.fact().zones(), position.fact().kind())
                    .ifPresent(zone -> all.add(new BuildPosition(
                            position,
                            zone,
                            out,
                            in,
                            in != null && span.fitted(in.fact()),
                            of.stream()
                                    .anyMatch(fitment -> !fitment.fact().from().isAfter(span.to())),
                            in == null ? null : ledger.life(in.fact().part(), Counter.RUNNING),
                            in == null ? null : worst(in))));
        }
        all.sort(IN_TURN);
        return all;
    }

    private static Optional<Zone> zone(Set<Zone> opened, PartKind kind) {
        return EnumSet.copyOf(opened).stream()
                .filter(zone -> zone.reaches(kind))
                .findFirst();
    }

    private @Nullable Mark worst(Entry<Fitment> in) {
        return marks.ofPart(in.fact().part()).stream().findFirst().orElse(null);
    }
}
