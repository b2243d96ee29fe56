package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import witnessmark.domain.Coded;
import witnessmark.domain.Decision;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Verdict;
import witnessmark.outcome.ProblemKind;

/** Writes down what came of a decision: in words, how it looks afterwards, and the incident it led to. */
public final class CameOfIt implements LogSheet {
    public static final SheetField DECISION = choice("decision", 4);
    public static final SheetField OUTCOME = text("outcome", 4);
    public static final SheetField VERDICT = choice("verdict", 1);
    public static final SheetField LED_TO = choice("led_to", 3);

    @Override
    public String key() {
        return "came_of_it";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("came_of_it", List.of(DECISION), List.of(OUTCOME), List.of(VERDICT, LED_TO)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(
                DECISION,
                decided(sight).stream()
                        .filter(each -> each.fact().verdict() == null)
                        .findFirst()
                        .map(each -> each.id().text())
                        .orElse(""));
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "decision" -> DecideIt.named(decided(sight));
            case "verdict" -> MoneyChoices.orNone(Choice.words(Verdict.values()));
            case "led_to" -> MoneyChoices.incidents(sight);
            default -> List.of();
        };
    }

    /** What was decided, the latest first. */
    private static List<Entry<Decision>> decided(SheetSight sight) {
        return sight.facts().of(Decision.class).where(decision -> decision.decided() != null).stream()
                .sorted(Comparator.comparing(
                                (Entry<Decision> decision) -> decision.fact().asked())
                        .reversed())
                .toList();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Decision> decision = in.chosen(DECISION, Decision.class);
        Verdict verdict = Coded.find(Verdict.class, in.text(VERDICT)).orElse(null);
        Id<Incident> led = MoneyChoices.picked(in, LED_TO, Incident.class);
        if (in.text(OUTCOME).isEmpty() && verdict == null && led == null) {
            in.wrong(OUTCOME, ProblemKind.NEEDED, OUTCOME);
        }
        if (decision != null && in.fine()) {
            Decision was = decision.fact();
            in.change(
                    DECISION,
                    decision,
                    new Decision(
                            was.mark(),
                            was.question(),
                            was.asked(),
                            was.engine(),
                            was.car(),
                            was.event(),
                            was.answers(),
                            was.adviser(),
                            was.advice(),
                            was.decided(),
                            was.decidedBy(),
                            was.dissent(),
                            in.text(OUTCOME).isEmpty() ? was.outcome() : in.text(OUTCOME),
                            verdict == null ? was.verdict() : verdict,
                            led == null ? was.ledTo() : led,
                            was.note()));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Decision.class, typed.text(DECISION))
                .map(decision -> decision.fact().mark())
                .orElse(""));
    }
}
