package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Closes an incident with words. What is still missing is said, and keeps nobody from closing it. */
public final class CloseIncident implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
    public static final SheetField BECAUSE = text("incident_because", 4);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "close_incident";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("close_incident", List.of(INCIDENT), List.of(BECAUSE), List.of(WHEN, WHEN_TIME, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(INCIDENT, Incidents.onlyOpen(sight), WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Incidents.ofEngine(INCIDENT, engine, sight);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(INCIDENT) ? Incidents.choices(sight, incident -> incident.closed() == null) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Incident> incident = in.chosen(INCIDENT, Incident.class);
        if (incident != null && incident.fact().closed() != null) {
            in.wrong(INCIDENT, ProblemKind.NEEDED, INCIDENT);
        } else if (incident != null) {
            List<Object> missing = Incidents.missing(in.sight(), incident.id());
            in.note(
                    INCIDENT,
                    missing.isEmpty()
                            ? SheetNote.of("incident_nothing_missing")
                            : SheetNote.of("line", missing.toArray()));
        }
        in.note(BECAUSE, SheetNote.of("incident_because_example"));
        String because = in.needed(BECAUSE);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        String by = in.needed(BY);
        if (incident != null && when != null && when.isBefore(incident.fact().at())) {
            in.wrong(WHEN, ProblemKind.EARLIER_THAN, WHEN, when, incident.fact().at());
        }
        if (incident != null && when != null && in.fine()) {
            in.change(INCIDENT, incident, Incidents.ended(incident.fact(), when, by, because));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Incidents.name(sight, typed.text(INCIDENT)), typed.text(BECAUSE));
    }
}
