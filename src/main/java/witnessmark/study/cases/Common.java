package witnessmark.study.cases;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Joint;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Person;
import witnessmark.domain.Run;
import witnessmark.domain.Tool;
import witnessmark.ledger.LifeLedger;
import witnessmark.quantity.Moment;
import witnessmark.study.result.Aspect;
import witnessmark.study.result.InCommon;

/** What two or more incidents share, and what only one of them had, from everything the logbook says of each. */
public final class Common {
    /** One thing an incident had. */
    private record Thing(Aspect aspect, String what) {}

    private final LifeLedger ledger;
    private final Facts facts;

    public Common(LifeLedger ledger) {
        this.ledger = ledger;
        this.facts = ledger.facts();
    }

    /**
     * @param incidents two or more
     * @throws IllegalArgumentException for fewer, or the same one twice
     */
    public InCommon of(List<Entry<Incident>> incidents) {
        if (incidents.size() < 2 || incidents.stream().map(Entry::id).distinct().count() < incidents.size()) {
            throw new IllegalArgumentException("it takes two incidents to have something in common");
        }
        List<Entry<Incident>> byTime = incidents.stream()
                .sorted(Comparator.comparing(
                        (Entry<Incident> each) -> each.fact().at()))
                .toList();
        Map<Thing, List<Entry<Incident>>> had = new LinkedHashMap<>();
        byTime.forEach(incident -> things(incident)
                .forEach(thing ->
                        had.computeIfAbsent(thing, none -> new ArrayList<>()).add(incident)));
        List<InCommon.Alike> alike = new ArrayList<>();
        had.forEach((thing, in) -> alike.add(new InCommon.Alike(thing.aspect(), thing.what(), in)));
        alike.sort(Comparator.comparingInt((InCommon.Alike each) -> -each.in().size())
                .thenComparing(InCommon.Alike::aspect)
                .thenComparing(InCommon.Alike::what));
        return new InCommon(byTime, alike);
    }

    private Set<Thing> things(Entry<Incident> entry) {
        Incident incident = entry.fact();
        Set<Thing> things = new LinkedHashSet<>();
        Id<Engine> engine = incident.engine();
        if (engine != null) {
            add(things, Aspect.ENGINE, facts.of(Engine.class).get(engine).number());
            // what broke may come off the very minute it broke
            fitted(things, engine, incident.at().before());
            tightened(things, engine, incident.at());
        }
        Id<Car> car = incident.car();
        if (car != null) {
            add(things, Aspect.CAR, facts.of(Car.class).get(car).name());
        }
        findings(things, entry.id());
        where(things, incident);
        return things;
    }

    private static void add(Set<Thing> things, Aspect aspect, String what) {
        if (!what.isBlank()) {
            things.add(new Thing(aspect, what.strip()));
        }
    }

    private void fitted(Set<Thing> things, Id<Engine> engine, Moment at) {
        for (Entry<Fitment> fitment : ledger.fittedAt(engine, at).values()) {
            Part part = facts.of(Part.class).get(fitment.fact().part());
            PartDesign design = facts.of(PartDesign.class).get(part.design());
            add(things, Aspect.PART, part.mark());
            add(things, Aspect.DESIGN, design.name());
            add(things, Aspect.BATCH, part.batch());
        }
    }

    /** How each group of fasteners was tightened last before that. */
    private void tightened(Set<Thing> things, Id<Engine> engine, Moment at) {
        for (Joint joint : Fastened.last(facts, engine, at)) {
            Id<Tool> tool = joint.tool();
            add(
                    things,
                    Aspect.TOOL,
                    tool == null ? "" : facts.of(Tool.class).get(tool).mark());
            add(things, Aspect.HAND, joint.by());
            add(things, Aspect.HAND, joint.second());
            add(things, Aspect.LUBRICANT, joint.lubricant());
        }
        facts
                .of(Build.class)
                .where(build -> build.engine().equals(engine)
                        && build.closed() != null
                        && build.closed().isBefore(at))
                .stream()
                .map(Entry::fact)
                .max(Comparator.comparingInt(Build::number))
                .ifPresent(build -> add(things, Aspect.HAND, build.signedBy()));
    }

    /** Marks that say something is wrong, and where they are. */
    private void findings(Set<Thing> things, Id<Incident> incident) {
        for (Entry<Finding> entry : facts.of(Finding.class).where(each -> incident.equals(each.incident()))) {
            Finding finding = entry.fact();
            if (!ledger.asOf().counts(finding.at()) || finding.how() == HowMarked.NONE || finding.mark() == null) {
                continue;
            }
            if (finding.number() != null) {
                add(things, Aspect.NUMBER, Integer.toString(finding.number()));
            }
            String place = finding.place() == null ? "" : finding.place().code() + ", ";
            add(things, Aspect.MARK, place + finding.mark().code());
        }
    }

    private void where(Set<Thing> things, Incident incident) {
        Run run = incident.run() == null ? null : facts.of(Run.class).get(incident.run());
        Id<Event> event = incident.event() != null ? incident.event() : run == null ? null : run.event();
        if (event != null) {
            add(things, Aspect.CIRCUIT, facts.of(Event.class).get(event).circuit());
        }
        @Nullable Id<Person> driver = run == null ? null : run.driver();
        if (driver != null) {
            add(things, Aspect.DRIVER, facts.of(Person.class).get(driver).name());
        }
    }
}
