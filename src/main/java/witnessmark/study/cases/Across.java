package witnessmark.study.cases;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Joint;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Tool;
import witnessmark.ledger.LifeLedger;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;
import witnessmark.study.result.Aspect;
import witnessmark.study.result.ReadAcross;

/**
 * Which other engines carry what failed: parts of the same design or batch that are fitted now, and fasteners of the same kind
 * tightened with the same tool and not since.
 */
public final class Across {
    private final LifeLedger ledger;
    private final Facts facts;

    public Across(LifeLedger ledger) {
        this.ledger = ledger;
        this.facts = ledger.facts();
    }

    /** By engine, then by how closely it is alike: a batch before a design before a tool. */
    public List<ReadAcross> of(Entry<Incident> incident) {
        List<Part> failed = facts
                .of(IncidentPart.class)
                .where(each -> each.incident().equals(incident.id()))
                .stream()
                .map(each -> facts.of(Part.class).get(each.fact().part()))
                .distinct()
                .toList();
        List<ReadAcross> across = new ArrayList<>();
        facts.of(Engine.class)
                .inForce()
                .filter(engine -> !engine.id().equals(incident.fact().engine()))
                .sorted(Comparator.comparing(engine -> engine.fact().number()))
                .forEach(engine -> {
                    across.addAll(carried(engine, failed));
                    across.addAll(tightened(engine, incident, failed));
                });
        return across;
    }

    private List<ReadAcross> carried(Entry<Engine> engine, List<Part> failed) {
        List<Entry<Part>> fitted = ledger.fittedAt(engine.id(), ledger.asOf().last()).values().stream()
                .map(Entry::fact)
                .map(Fitment::part)
                .map(id -> facts.of(Part.class).find(id).orElseThrow())
                .toList();
        List<ReadAcross> alike = new ArrayList<>();
        Set<Id<Part>> named = new HashSet<>();
        Map<String, List<Entry<Part>>> batches = new LinkedHashMap<>();
        Map<Id<PartDesign>, List<Entry<Part>>> designs = new LinkedHashMap<>();
        for (Part part : failed) {
            for (Entry<Part> other : fitted) {
                boolean batch = !part.batch().isBlank()
                        && part.batch().equals(other.fact().batch())
                        && part.design().equals(other.fact().design());
                if (batch && named.add(other.id())) {
                    batches.computeIfAbsent(part.batch(), none -> new ArrayList<>())
                            .add(other);
                } else if (part.design().equals(other.fact().design()) && named.add(other.id())) {
                    designs.computeIfAbsent(part.design(), none -> new ArrayList<>())
                            .add(other);
                }
            }
        }
        batches.forEach((batch, parts) -> alike.add(new ReadAcross(engine, Aspect.BATCH, batch, parts, oldest(parts))));
        designs.forEach((design, parts) -> alike.add(new ReadAcross(
                engine, Aspect.DESIGN, facts.of(PartDesign.class).get(design).name(), parts, oldest(parts))));
        return alike;
    }

    private RunningTime oldest(Collection<Entry<Part>> parts) {
        return new RunningTime(parts.stream()
                .mapToLong(part -> ledger.life(part.id(), Counter.RUNNING).total())
                .max()
                .orElse(0));
    }

    /** Tools that tightened fasteners of the kinds that failed, or of the engine that failed where none of these did. */
    private List<ReadAcross> tightened(Entry<Engine> engine, Entry<Incident> incident, List<Part> failed) {
        Id<Engine> at = incident.fact().engine();
        if (at == null) {
            return List.of();
        }
        Set<PartKind> kinds = new HashSet<>();
        failed.forEach(
                part -> kinds.add(facts.of(PartDesign.class).get(part.design()).kind()));
        Collection<Joint> there = Fastened.last(facts, at, incident.fact().at());
        boolean any = there.stream().noneMatch(joint -> kinds.contains(joint.fasteners()));
        Set<Id<Tool>> tools = new LinkedHashSet<>();
        there.stream()
                .filter(joint -> any || kinds.contains(joint.fasteners()))
                .map(Joint::tool)
                .filter(Objects::nonNull)
                .forEach(tools::add);
        List<ReadAcross> alike = new ArrayList<>();
        for (Id<Tool> tool : tools) {
            Fastened.last(facts, engine.id(), ledger.asOf().last()).stream()
                    .filter(joint -> tool.equals(joint.tool()))
                    .map(Joint::at)
                    .min(Comparator.naturalOrder())
                    .ifPresent(first -> alike.add(new ReadAcross(
                            engine,
                            Aspect.TOOL,
                            facts.of(Tool.class).get(tool).mark(),
                            List.of(),
                            new RunningTime(ledger.engineSince(engine.id(), Counter.RUNNING, first)
                                    .total()))));
        }
        return alike;
    }
}
