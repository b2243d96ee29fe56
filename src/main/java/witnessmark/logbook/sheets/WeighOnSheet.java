package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import witnessmark.domain.Cause;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Speaks;
import witnessmark.domain.Weighing;
import witnessmark.outcome.ProblemKind;

/** Says how a finding speaks to a cause, on a sheet of its own. */
public final class WeighOnSheet implements LogSheet {
    public static final SheetField CAUSE = choice("weighed_cause", 4);
    public static final SheetField FINDING = choice("weighed_finding", 4);
    public static final SheetField SPEAKS = choice("weighed_speaks", 1);
    public static final SheetField WHY = text("weighed_why", 2);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "weighing";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("weighing", List.of(CAUSE), List.of(FINDING), List.of(SPEAKS, WHY, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(BY, sight.who());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(CAUSE, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "weighed_cause" -> Causes.choices(sight, incident -> true);
            case "weighed_finding" -> findings(typed, sight);
            case "weighed_speaks" -> Choice.words(Speaks.values());
            default -> List.of();
        };
    }

    /** Those of the incident of the cause. */
    private static List<Choice> findings(SheetTyped typed, SheetSight sight) {
        Id<Incident> of = sight.find(Cause.class, typed.text(CAUSE))
                .map(cause -> cause.fact().incident())
                .orElse(null);
        return of == null
                ? List.of()
                : sight.facts().of(Finding.class).where(finding -> of.equals(finding.incident())).stream()
                        .map(finding -> Choice.of(finding.id().text(), finding.fact()))
                        .toList();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Cause> cause = in.chosen(CAUSE, Cause.class);
        Entry<Finding> finding = in.chosen(FINDING, Finding.class);
        Speaks speaks = in.word(SPEAKS, Speaks.class);
        String by = in.needed(BY);
        if (cause != null && finding != null && weighed(in.sight(), finding.id(), cause.id())) {
            in.wrong(FINDING, ProblemKind.WEIGHED_ALREADY, cause.fact().statement());
        }
        if (cause != null && finding != null && speaks != null && in.fine()) {
            in.make(SPEAKS, new Weighing(finding.id(), cause.id(), speaks, in.text(WHY), by));
        }
    }

    private static boolean weighed(SheetSight sight, Id<Finding> finding, Id<Cause> cause) {
        return sight
                .facts()
                .of(Weighing.class)
                .where(each -> each.finding().equals(finding) && each.cause().equals(cause))
                .stream()
                .findAny()
                .isPresent();
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        return fact instanceof Weighing weighing
                ? Optional.of(Map.of(
                        CAUSE, weighing.cause().text(),
                        FINDING, weighing.finding().text(),
                        SPEAKS, weighing.speaks().code(),
                        WHY, weighing.why(),
                        BY, weighing.by()))
                : Optional.empty();
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Causes.name(sight, typed.text(CAUSE)));
    }
}
