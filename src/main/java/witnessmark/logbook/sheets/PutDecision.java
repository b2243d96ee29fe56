package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.Engine;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;

/** Puts a question: what is to be decided, and the ways that are open with what each takes. */
public final class PutDecision implements LogSheet {
    public static final SheetField QUESTION = text("question", 3);
    public static final SheetField MARK = text("decision_mark", 1);
    public static final SheetField ENGINE = choice("engine", 1);
    public static final SheetField CAR = choice("car", 1);
    public static final SheetField EVENT = choice("event", 1);
    public static final SheetField ANSWERS = choice("answers", 1);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);

    private static final List<Way> WAYS =
            IntStream.rangeClosed(1, 3).mapToObj(Way::of).toList();

    /** The fields of one way. */
    private record Way(SheetField name, SheetField past, SheetField money, SheetField hours, SheetField days) {
        static Way of(int nth) {
            return new Way(
                    text("way_" + nth, 2),
                    text("way_past_" + nth, 2),
                    text("way_money_" + nth, 1),
                    SheetField.of("way_hours_" + nth, FieldKind.HOURS),
                    text("way_days_" + nth, 1));
        }

        List<SheetField> details() {
            return List.of(past, money, hours, days);
        }
    }

    @Override
    public String key() {
        return "put_decision";
    }

    @Override
    public List<SheetGroup> groups() {
        List<SheetGroup> groups = new ArrayList<>();
        groups.add(SheetGroup.of(
                "put_decision",
                List.of(QUESTION, MARK),
                List.of(ENGINE, CAR, EVENT, ANSWERS),
                List.of(WHEN, WHEN_TIME)));
        List<List<SheetField>> rows = new ArrayList<>();
        WAYS.forEach(way -> {
            rows.add(List.of(way.name(), way.past()));
            rows.add(List.of(way.money(), way.hours(), way.days()));
        });
        groups.add(new SheetGroup("ways", rows));
        return groups;
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(WHEN, sight.today().toString());
        out.put(MARK, nextMark(sight));
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ENGINE, engine.text());
    }

    /** {@code DEC-07} after {@code DEC-06}. */
    private static String nextMark(SheetSight sight) {
        int last = sight.facts().of(Decision.class).all().stream()
                .map(decision -> decision.fact().mark())
                .filter(mark -> mark.matches("DEC-\\d{1,6}"))
                .mapToInt(mark -> Integer.parseInt(mark.substring(4)))
                .max()
                .orElse(0);
        return "DEC-" + (last < 9 ? "0" : "") + (last + 1);
    }

    /** The details of a way are asked for once it has a name. */
    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return WAYS.stream()
                .filter(way -> way.details().contains(field))
                .allMatch(way -> !typed.text(way.name()).isEmpty());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "engine" -> MoneyChoices.engines(sight);
            case "car" -> MoneyChoices.cars(sight);
            case "event" -> MoneyChoices.events(sight);
            case "answers" -> MoneyChoices.incidents(sight);
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        String question = in.needed(QUESTION);
        String mark = in.newName(MARK, Decision.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        List<Option> options = new ArrayList<>();
        for (Way way : WAYS) {
            Option option = option(in, way);
            if (option != null && options.stream().anyMatch(each -> each.name().equalsIgnoreCase(option.name()))) {
                in.wrong(way.name(), ProblemKind.NEEDED, way.name());
            }
            if (option != null) {
                options.add(option);
            }
        }
        if (!in.fine() || when == null) {
            return;
        }
        Id<Decision> decision = in.make(
                QUESTION,
                new Decision(
                        mark,
                        question,
                        when,
                        MoneyChoices.picked(in, ENGINE, Engine.class),
                        MoneyChoices.picked(in, CAR, Car.class),
                        MoneyChoices.picked(in, EVENT, Event.class),
                        MoneyChoices.picked(in, ANSWERS, Incident.class),
                        "",
                        "",
                        null,
                        "",
                        "",
                        "",
                        null,
                        null,
                        ""));
        options.forEach(option -> in.make(
                option.field(),
                new DecisionOption(
                        decision,
                        option.name(),
                        option.money(),
                        option.minutes(),
                        option.days(),
                        null,
                        option.past(),
                        false,
                        "")));
    }

    /** A way as it is typed. */
    private record Option(
            SheetField field,
            String name,
            @Nullable Money money,
            @Nullable Integer minutes,
            @Nullable Integer days,
            String past) {}

    private static @Nullable Option option(ReadSheet in, Way way) {
        String name = in.text(way.name());
        if (name.isEmpty()) {
            return null;
        }
        ReadValues values = new ReadValues(in);
        return new Option(
                way.name(),
                name,
                values.money(way.money()),
                PlanJob.minutes(values.hours(way.hours())),
                values.count(way.days()),
                in.text(way.past()));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(MARK));
    }
}
