package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.domain.PartHarm;
import witnessmark.outcome.ProblemKind;

/** Names a part of an incident that was reported, with what it had run by then. */
public final class NameIncidentPart implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
    public static final SheetField NOTE = text("incident_part_note", 4);

    static final HarmedPart PART = HarmedPart.of("");

    @Override
    public String key() {
        return "incident_part";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("incident_part", List.of(INCIDENT), PART.row(), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(INCIDENT, Incidents.onlyOpen(sight));
        out.put(PART.harm(), PartHarm.FAILED.code());
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Incidents.ofEngine(INCIDENT, engine, sight);
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(INCIDENT);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return PART.asks(field, typed, sight);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "incident" -> Incidents.choices(sight, incident -> true);
            case "incident_part_note" -> List.of();
            default -> PART.choices(field, typed, sight, there(typed, sight));
        };
    }

    private static HarmedPart.There there(SheetTyped typed, SheetSight sight) {
        return sight.find(Incident.class, typed.text(INCIDENT))
                .map(Entry::fact)
                .map(incident -> new HarmedPart.There(incident.engine(), incident.car(), incident.at()))
                .orElse(new HarmedPart.There(null, null, null));
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Incident> incident = in.chosen(INCIDENT, Incident.class);
        HarmedPart.@Nullable Named named =
                PART.read(in, incident == null ? null : incident.fact().at());
        in.note(NOTE, SheetNote.of("incident_part_example"));
        if (incident == null || named == null) {
            return;
        }
        boolean already = in
                .sight()
                .facts()
                .of(IncidentPart.class)
                .where(part -> part.incident().equals(incident.id())
                        && part.part().equals(named.part())
                        && part.member().equals(named.member()))
                .stream()
                .findAny()
                .isPresent();
        if (already) {
            in.wrong(PART.part(), ProblemKind.PART_NAMED_ALREADY, in.sight().name(Part.class, named.part()));
        }
        if (in.fine()) {
            in.make(PART.part(), named.of(incident.id(), in.text(NOTE)));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                PartsNow.name(sight, typed.text(PART.part()), typed.text(PART.member())),
                Incidents.name(sight, typed.text(INCIDENT)));
    }
}
