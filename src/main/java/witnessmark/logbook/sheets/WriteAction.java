package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.ActionCarried;
import witnessmark.domain.ActionKind;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.quantity.Moment;

/** Writes what is done about an incident, and which engine carries it: its running from then on counts towards proof. */
public final class WriteAction implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
    public static final SheetField KIND = choice("action_kind", 1);
    public static final SheetField CAUSE = choice("action_cause", 3);
    public static final SheetField WHAT = text("action_what", 4);
    public static final SheetField WHO = text("action_who", 1);
    public static final SheetField DUE = of("action_due", FieldKind.DAY);
    public static final SheetField DONE = of("action_done", FieldKind.DAY);
    public static final SheetField DONE_TIME = of("action_done_time", FieldKind.CLOCK);
    public static final SheetField ENGINE = choice("action_engine", 1);
    public static final SheetField NOTE = text("action_note", 3);

    @Override
    public String key() {
        return "action";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "action",
                List.of(INCIDENT),
                List.of(KIND, CAUSE),
                List.of(WHAT),
                List.of(WHO, DUE, DONE, DONE_TIME),
                List.of(ENGINE, NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(INCIDENT, Incidents.onlyOpen(sight));
        out.put(WHO, sight.who());
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Incidents.ofEngine(INCIDENT, engine, sight);
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(INCIDENT, WHO);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "incident" -> Incidents.choices(sight, incident -> true);
            case "action_kind" -> Choice.words(ActionKind.values());
            case "action_cause" ->
                Choice.orNone(Causes.choices(sight, incident -> incident.text().equals(typed.text(INCIDENT))));
            case "action_engine" -> Choice.orNone(sight.all(Engine.class, engine -> true));
            default -> List.of();
        };
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        return picked.equals(INCIDENT)
                ? sight.find(Incident.class, typed.text(INCIDENT))
                        .map(incident -> incident.fact().engine())
                        .map(engine -> Map.of(ENGINE, engine.text()))
                        .orElse(Map.of())
                : Map.of();
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(ENGINE)
                || !ActionKind.CONTAINMENT.code().equals(typed.text(KIND))
                        && !typed.text(DONE).isBlank();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        Entry<Incident> incident = in.chosen(INCIDENT, Incident.class);
        ActionKind kind = in.word(KIND, ActionKind.class);
        Entry<Cause> cause = in.text(CAUSE).isEmpty() ? null : in.chosen(CAUSE, Cause.class);
        in.note(WHAT, SheetNote.of("action_example"));
        String what = in.needed(WHAT);
        LocalDate due = values.dayAhead(DUE);
        Moment done = in.text(DONE).isBlank() ? null : values.moment(DONE, DONE_TIME);
        Entry<Engine> engine =
                !asks(ENGINE, in.typed(), in.sight()) || in.text(ENGINE).isEmpty()
                        ? null
                        : in.chosen(ENGINE, Engine.class);
        in.note(ENGINE, SheetNote.of("action_carries"));
        if (incident != null && kind != null && in.fine()) {
            Id<CaseAction> action = in.make(
                    WHAT,
                    new CaseAction(
                            incident.id(),
                            cause == null ? null : cause.id(),
                            kind,
                            what,
                            in.text(WHO),
                            due,
                            done,
                            in.text(NOTE)));
            if (engine != null && done != null) {
                in.make(
                        ENGINE,
                        new ActionCarried(
                                action, engine.id(), null, done, in.sight().who()));
            }
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Incidents.name(sight, typed.text(INCIDENT)), typed.text(WHAT));
    }
}
