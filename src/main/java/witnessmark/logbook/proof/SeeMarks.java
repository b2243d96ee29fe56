package witnessmark.logbook.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.logbook.View;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.LookLine;
import witnessmark.logbook.faces.SeeFaces;
import witnessmark.quantity.Moment;
import witnessmark.study.FailedAt;

/**
 * Sees what incidents left on faces: what was found on the head, gasket and block that were in the engine, or that the incident
 * names, from its day on until the part is skimmed, fitted again or the engine closed.
 */
public final class SeeMarks {
    private final View view;
    private final Facts facts;
    private final Map<Id<EngineDesign>, Face> faces = new LinkedHashMap<>();

    private SeeMarks(View view) {
        this.view = view;
        this.facts = view.facts();
    }

    /** Of incidents, in the order asked. */
    public static MarksOfCases of(View view, List<Entry<Incident>> incidents) {
        SeeMarks see = new SeeMarks(view);
        List<MarksOfCases.OfCase> cases = incidents.stream().map(see::of).toList();
        return new MarksOfCases(
                see.faces.size() == 1 ? see.faces.values().iterator().next() : null, cases);
    }

    private MarksOfCases.OfCase of(Entry<Incident> incident) {
        List<MarksOfCases.Marked> marks = new ArrayList<>();
        for (Id<Part> part : parts(incident)) {
            SeeFaces.of(view, part).ifPresent(page -> marks(page, incident.fact(), marks));
        }
        return new MarksOfCases.OfCase(incident, marks);
    }

    private Set<Id<Part>> parts(Entry<Incident> incident) {
        Set<Id<Part>> parts = new LinkedHashSet<>();
        facts.of(IncidentPart.class)
                .where(each -> each.incident().equals(incident.id()))
                .forEach(each -> parts.add(each.fact().part()));
        Id<Engine> engine = FailedAt.engine(facts, incident.fact());
        if (engine != null) {
            Moment before = incident.fact().at().before();
            view.ledger()
                    .fittedAt(engine, before)
                    .values()
                    .forEach(fitment -> parts.add(fitment.fact().part()));
        }
        return parts;
    }

    private void marks(FacePage page, Incident incident, List<MarksOfCases.Marked> marks) {
        Moment until = until(page.part().id(), incident);
        for (LookLine look : page.looks()) {
            Moment at = look.look().fact().at();
            boolean early = at.day().isBefore(incident.at().day());
            if (early || until != null && at.isAfter(until)) {
                continue;
            }
            int before = marks.size();
            look.marks()
                    .forEach(mark -> marks.add(new MarksOfCases.Marked(page.part(), look.look(), mark.fact(), null)));
            look.findings().stream()
                    .map(ZoneFinding::zone)
                    .filter(zone -> look.marks().stream()
                            .noneMatch(mark -> mark.fact()
                                            .x()
                                            .equals(zone.deepest().x())
                                    && mark.fact().y().equals(zone.deepest().y())))
                    .forEach(zone -> marks.add(new MarksOfCases.Marked(page.part(), look.look(), null, zone)));
            if (marks.size() > before && page.face() != null && page.design() != null) {
                faces.put(page.design().id(), page.face());
            }
        }
    }

    /** When the part was skimmed, fitted again, or the engine closed after the incident; null while it was not. */
    private @Nullable Moment until(Id<Part> part, Incident incident) {
        List<Moment> ends = new ArrayList<>();
        facts.of(Work.class)
                .where(work -> part.equals(work.part()) && work.kind() == WorkKind.SKIM)
                .forEach(work -> ends.add(work.fact().at()));
        facts.of(Fitment.class)
                .where(fitment -> fitment.part().equals(part))
                .forEach(fitment -> ends.add(fitment.fact().from()));
        Id<Engine> engine = FailedAt.engine(facts, incident);
        facts.of(Build.class)
                .where(build -> build.engine().equals(engine) && build.closed() != null)
                .forEach(build -> ends.add(build.fact().closed()));
        return ends.stream()
                .filter(end -> end.isAfter(incident.at()))
                .min(Comparator.naturalOrder())
                .map(Moment::before)
                .orElse(null);
    }
}
