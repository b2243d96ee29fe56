package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentLink;
import witnessmark.outcome.ProblemKind;

/** Links two incidents that belong together, and says what joins them. */
public final class LinkIncidents implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
    public static final SheetField OTHER = choice("linked_incident", 4);
    public static final SheetField WHY = text("linked_why", 3);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "incident_link";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("incident_link", List.of(INCIDENT), List.of(OTHER), List.of(WHY, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(INCIDENT, Incidents.onlyOpen(sight));
        out.put(BY, sight.who());
        return out;
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(INCIDENT, BY);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "incident" -> Incidents.choices(sight, incident -> true);
            case "linked_incident" ->
                Incidents.choices(sight, incident -> true).stream()
                        .filter(choice -> !choice.key().equals(typed.text(INCIDENT)))
                        .toList();
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Incident> incident = in.chosen(INCIDENT, Incident.class);
        Entry<Incident> other = in.chosen(OTHER, Incident.class);
        in.note(WHY, SheetNote.of("linked_example"));
        String why = in.needed(WHY);
        String by = in.needed(BY);
        if (incident != null && other != null && linked(in.sight(), incident.id(), other.id())) {
            in.wrong(
                    OTHER,
                    ProblemKind.LINKED_ALREADY,
                    incident.fact().mark(),
                    other.fact().mark());
        }
        if (incident != null && other != null && !incident.id().equals(other.id()) && in.fine()) {
            in.make(WHY, new IncidentLink(incident.id(), other.id(), why, by));
        }
    }

    private static boolean linked(SheetSight sight, Id<Incident> one, Id<Incident> other) {
        return sight
                .facts()
                .of(IncidentLink.class)
                .where(link -> link.incident().equals(one) && link.other().equals(other)
                        || link.incident().equals(other) && link.other().equals(one))
                .stream()
                .findAny()
                .isPresent();
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        return fact instanceof IncidentLink link
                ? Optional.of(Map.of(
                        INCIDENT, link.incident().text(),
                        OTHER, link.other().text(),
                        WHY, link.why(),
                        BY, link.by()))
                : Optional.empty();
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Incidents.name(sight, typed.text(INCIDENT)), Incidents.name(sight, typed.text(OTHER)));
    }
}
