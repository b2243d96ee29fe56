package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Prevention;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Writes what would have kept an incident from happening, with its money and its hours. */
public final class WritePrevention implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
    public static final SheetField WHAT = text("prevention_what", 4);
    public static final SheetField MONEY = text("prevention_money", 1);
    public static final SheetField TAKES = of("prevention_takes", FieldKind.HOURS);
    public static final SheetField NOTE = text("prevention_note", 2);

    @Override
    public String key() {
        return "prevention";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("prevention", List.of(INCIDENT), List.of(WHAT), List.of(MONEY, TAKES, NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return new HashMap<>(Map.of(INCIDENT, Incidents.onlyOpen(sight)));
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
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(INCIDENT) ? Incidents.choices(sight, incident -> true) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        Entry<Incident> incident = in.chosen(INCIDENT, Incident.class);
        in.note(WHAT, SheetNote.of("prevention_example"));
        String what = in.needed(WHAT);
        in.note(MONEY, SheetNote.of("prevention_money", in.sight().currency().getCurrencyCode()));
        Money money = values.money(MONEY);
        if (money != null && money.minor() < 0) {
            in.wrong(MONEY, Problem.unread(MONEY, in.text(MONEY), "85"));
        }
        in.note(TAKES, SheetNote.of("if_known"));
        RunningTime takes = values.hours(TAKES);
        if (incident != null && in.fine()) {
            in.make(WHAT, new Prevention(incident.id(), what, money, PlanJob.minutes(takes), in.text(NOTE)));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Incidents.name(sight, typed.text(INCIDENT)), typed.text(WHAT));
    }
}
