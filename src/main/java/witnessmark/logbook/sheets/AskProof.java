package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.ProofBy;
import witnessmark.domain.ProofWanted;
import witnessmark.domain.ReadingKind;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/** Says what is asked for before a fix is taken as proven; set before the engine runs. */
public final class AskProof implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
    public static final SheetField BY_WHAT = choice("proof_by", 1);
    public static final SheetField AFTER = of("proof_after", FieldKind.HOURS);
    public static final SheetField TIMES = text("proof_times", 1);
    public static final SheetField READING = choice("proof_reading", 1);
    public static final SheetField WHAT = text("proof_what", 4);

    @Override
    public String key() {
        return "proof_wanted";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "proof_wanted", List.of(INCIDENT), List.of(BY_WHAT, AFTER, TIMES, READING), List.of(WHAT)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(INCIDENT, Incidents.onlyOpen(sight), TIMES, "1");
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
        boolean running = ProofBy.RUNNING.code().equals(typed.text(BY_WHAT));
        boolean reading = ProofBy.READING.code().equals(typed.text(BY_WHAT));
        return switch (field.key()) {
            case "proof_reading" -> reading;
            case "proof_times" -> !running;
            case "proof_what" -> !running;
            default -> true;
        };
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "incident" -> Incidents.choices(sight, incident -> true);
            case "proof_by" -> Choice.words(ProofBy.values());
            case "proof_reading" -> Choice.words(ReadingKind.values());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        Entry<Incident> incident = in.chosen(INCIDENT, Incident.class);
        ProofBy kind = in.word(BY_WHAT, ProofBy.class);
        RunningTime after = values.hours(AFTER);
        boolean running = kind == ProofBy.RUNNING;
        if (running) {
            in.needed(AFTER);
        }
        if (after != null && after.millis() == 0) {
            in.wrong(AFTER, ProblemKind.NEEDED, AFTER);
        }
        in.note(AFTER, SheetNote.of("proof_after_since"));
        Integer times = running ? Integer.valueOf(1) : values.atLeast(TIMES, 1);
        ReadingKind reading = kind == ProofBy.READING ? in.word(READING, ReadingKind.class) : null;
        in.note(WHAT, SheetNote.of("proof_example"));
        String what = running ? "" : in.needed(WHAT);
        if (incident != null && kind != null && times != null && in.fine()) {
            in.make(
                    BY_WHAT,
                    new ProofWanted(
                            incident.id(),
                            null,
                            kind,
                            what,
                            after,
                            times,
                            reading,
                            in.sight().now(),
                            in.sight().who()));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Incidents.name(sight, typed.text(INCIDENT)));
    }
}
