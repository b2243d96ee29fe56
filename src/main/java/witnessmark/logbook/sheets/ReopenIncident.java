package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.outcome.ProblemKind;

/** Opens a closed incident again; why stays in the history. */
public final class ReopenIncident implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
    public static final SheetField WHY = text("incident_reopened", 4);

    @Override
    public String key() {
        return "reopen_incident";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("reopen_incident", List.of(INCIDENT), List.of(WHY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(INCIDENT) ? Incidents.choices(sight, incident -> incident.closed() != null) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Incident> incident = in.chosen(INCIDENT, Incident.class);
        if (incident != null && incident.fact().closed() == null) {
            in.wrong(INCIDENT, ProblemKind.NEEDED, INCIDENT);
        } else if (incident != null) {
            in.note(
                    INCIDENT,
                    SheetNote.of(
                            "incident_closed",
                            java.util.Objects.requireNonNull(incident.fact().closed()),
                            incident.fact().closedBecause()));
        }
        in.needed(WHY);
        in.note(WHY, SheetNote.of("incident_reopened"));
        if (incident != null && in.fine()) {
            in.change(INCIDENT, incident, Incidents.ended(incident.fact(), null, "", ""));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Incidents.name(sight, typed.text(INCIDENT)), typed.text(WHY));
    }
}
