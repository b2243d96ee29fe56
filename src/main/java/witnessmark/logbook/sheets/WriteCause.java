package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseArea;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.outcome.ProblemKind;

/** Writes a cause of an incident, with its share of the blame where somebody says one. */
public final class WriteCause implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
    public static final SheetField STATEMENT = text("cause_statement", 4);
    public static final SheetField AREA = choice("cause_area", 2);
    public static final SheetField SHARE = text("cause_share", 1);
    public static final SheetField BY = text("by", 1);
    public static final SheetField PREDICTS = text("cause_predicts", 4);
    public static final SheetField NOTE = text("cause_note", 4);

    @Override
    public String key() {
        return "cause";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "cause",
                List.of(INCIDENT),
                List.of(STATEMENT),
                List.of(AREA, SHARE, BY),
                List.of(PREDICTS),
                List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(INCIDENT, Incidents.onlyOpen(sight), BY, sight.who());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Incidents.ofEngine(INCIDENT, engine, sight);
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(INCIDENT, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "incident" -> Incidents.choices(sight, incident -> true);
            case "cause_area" -> Choice.words(CauseArea.values());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Incident> incident = in.chosen(INCIDENT, Incident.class);
        in.note(STATEMENT, SheetNote.of("cause_example"));
        String statement = in.needed(STATEMENT);
        CauseArea area = in.word(AREA, CauseArea.class);
        int left = incident == null ? Cause.WHOLE : Incidents.left(in.sight(), incident.id());
        in.note(SHARE, SheetNote.of("cause_left", new Percent(left)));
        Integer share = Percent.read(in, SHARE, 0);
        if (share != null && share > left) {
            in.wrong(SHARE, ProblemKind.SHARE_BEYOND_WHOLE, new Percent(share), new Percent(left));
        }
        String by = in.needed(BY);
        if (incident != null && area != null && in.fine()) {
            String predicts = in.text(PREDICTS);
            in.make(
                    STATEMENT,
                    new Cause(
                            incident.id(),
                            statement,
                            area,
                            share,
                            by,
                            in.text(NOTE),
                            predicts.isEmpty() ? null : predicts));
        }
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        return fact instanceof Cause cause
                ? Optional.of(Map.of(
                        INCIDENT, cause.incident().text(),
                        STATEMENT, cause.statement(),
                        AREA, cause.area().code(),
                        SHARE, AsText.percent(cause.share()),
                        BY, cause.by(),
                        PREDICTS, cause.predicts() == null ? "" : cause.predicts(),
                        NOTE, cause.note()))
                : Optional.empty();
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Incidents.name(sight, typed.text(INCIDENT)), typed.text(STATEMENT));
    }
}
