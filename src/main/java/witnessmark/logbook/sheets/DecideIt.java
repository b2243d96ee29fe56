package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.Entry;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Writes down what was decided: which way, by whom, who was asked, and who thought otherwise. */
public final class DecideIt implements LogSheet {
    public static final SheetField DECISION = choice("decision", 4);
    public static final SheetField OPTION = choice("decision_option", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField BY = text("decided_by", 2);
    public static final SheetField ASKED = choice("decision_asked", 1);
    public static final SheetField ADVISER = text("adviser", 1);
    public static final SheetField ADVICE = text("advice", 4);
    public static final SheetField DISSENT = text("dissent", 4);

    @Override
    public String key() {
        return "decide";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("decide", List.of(DECISION), List.of(OPTION, WHEN, WHEN_TIME), List.of(BY)),
                SheetGroup.of("decide_asked", List.of(ASKED, ADVISER), List.of(ADVICE), List.of(DISSENT)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(
                DECISION,
                open(sight).stream().findFirst().map(each -> each.id().text()).orElse(""),
                WHEN,
                sight.today().toString(),
                BY,
                sight.who(),
                ASKED,
                SheetWord.NOBODY_ASKED.key());
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !(field.equals(ADVISER) || field.equals(ADVICE)) || typed.is(ASKED, SheetWord.SOMEBODY_ASKED);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "decision" -> named(open(sight));
            case "decision_option" ->
                options(sight, typed.text(DECISION)).stream()
                        .map(option -> Choice.of(option.id().text(), option.fact()))
                        .toList();
            case "decision_asked" -> List.of(SheetWord.NOBODY_ASKED.choice(), SheetWord.SOMEBODY_ASKED.choice());
            default -> List.of();
        };
    }

    /** By mark and question. */
    static List<Choice> named(List<Entry<Decision>> decisions) {
        return decisions.stream()
                .map(decision -> Choice.of(
                        decision.id().text(),
                        SheetNote.of(
                                "decision_named",
                                decision.fact().mark(),
                                decision.fact().question())))
                .toList();
    }

    static List<Entry<DecisionOption>> options(SheetSight sight, String decision) {
        return sight.facts()
                .of(DecisionOption.class)
                .where(option -> option.decision().text().equals(decision));
    }

    private static List<Entry<Decision>> open(SheetSight sight) {
        return sight.facts().of(Decision.class).where(decision -> decision.decided() == null).stream()
                .sorted(Comparator.comparing(
                        (Entry<Decision> decision) -> decision.fact().asked()))
                .toList();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Decision> decision = in.chosen(DECISION, Decision.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        String by = in.needed(BY);
        boolean asked = in.is(ASKED, SheetWord.SOMEBODY_ASKED);
        String adviser = asked ? in.needed(ADVISER) : "";
        in.note(DISSENT, SheetNote.of("dissent_example"));
        if (decision == null) {
            return;
        }
        List<Entry<DecisionOption>> options = options(in.sight(), decision.id().text());
        Entry<DecisionOption> option = options.isEmpty() ? null : in.chosen(OPTION, DecisionOption.class);
        if (options.isEmpty()) {
            in.note(OPTION, SheetNote.of("no_options"));
        }
        if (when != null && when.compareTo(decision.fact().asked()) < 0) {
            in.wrong(WHEN, ProblemKind.EARLIER_THAN, WHEN, when, decision.fact().asked());
        }
        if (option != null && !option.fact().decision().equals(decision.id())) {
            in.wrong(OPTION, ProblemKind.NEEDED, OPTION);
        }
        if (in.fine() && when != null) {
            in.change(DECISION, decision, decided(decision.fact(), when, by, adviser, in));
            new ArrayList<>(options).forEach(each -> in.change(OPTION, each, taken(each.fact(), each.equals(option))));
        }
    }

    private static Decision decided(Decision was, Moment when, String by, String adviser, ReadSheet in) {
        return new Decision(
                was.mark(),
                was.question(),
                was.asked(),
                was.engine(),
                was.car(),
                was.event(),
                was.answers(),
                adviser,
                adviser.isEmpty() ? "" : in.text(ADVICE),
                when,
                by,
                in.text(DISSENT),
                was.outcome(),
                was.verdict(),
                was.ledTo(),
                was.note());
    }

    private static DecisionOption taken(DecisionOption was, boolean taken) {
        return new DecisionOption(
                was.decision(),
                was.name(),
                was.money(),
                was.minutes(),
                was.days(),
                was.limit(),
                was.past(),
                taken,
                was.note());
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Decision.class, typed.text(DECISION))
                .map(decision -> decision.fact().mark())
                .orElse(""));
    }
}
