package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.Car;
import witnessmark.domain.CostCategory;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.quantity.Money;

/** Writes down what is planned to be spent. */
public final class WriteBudget implements LogSheet {
    public static final SheetField EVENT = choice("event", 1);
    public static final SheetField CAR = choice("car", 1);
    public static final SheetField KIND = choice("cost_kind", 1);
    public static final SheetField AMOUNT = text("cost_amount", 1);
    public static final SheetField RATE = text("cost_rate", 1);
    public static final SheetField DAY = of("day", FieldKind.DAY);
    public static final SheetField NOTE = text("note", 4);

    @Override
    public String key() {
        return "write_budget";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("budget", List.of(EVENT, CAR, KIND, AMOUNT), List.of(RATE, DAY), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(KIND, CostCategory.ENTRY.code(), DAY, sight.today().toString());
    }

    /** What is planned for an event counts for its first day. */
    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        return picked.equals(EVENT)
                ? sight.find(Event.class, typed.text(EVENT))
                        .map(event -> Map.of(DAY, event.fact().firstDay().toString()))
                        .orElse(Map.of())
                : Map.of();
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(EVENT, CAR, DAY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(RATE) || TypedAmount.isForeign(AMOUNT, typed, sight);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "event" -> MoneyChoices.events(sight);
            case "car" -> MoneyChoices.cars(sight);
            case "cost_kind" -> Choice.words(CostCategory.values());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        CostCategory kind = in.word(KIND, CostCategory.class);
        Money amount = TypedAmount.needed(in, AMOUNT);
        BigDecimal rate = TypedAmount.rate(in, RATE, amount);
        LocalDate day = new ReadValues(in).plannedDay(DAY);
        if (in.fine() && kind != null && amount != null && day != null) {
            in.make(
                    AMOUNT,
                    new BudgetLine(
                            day,
                            MoneyChoices.picked(in, EVENT, Event.class),
                            MoneyChoices.picked(in, CAR, Car.class),
                            kind,
                            amount,
                            rate,
                            in.text(NOTE)));
        }
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof BudgetLine line)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(EVENT, MoneyChoices.text(line.event()));
        out.put(CAR, MoneyChoices.text(line.car()));
        out.put(KIND, line.category().code());
        out.put(AMOUNT, TypedAmount.text(line.amount(), sight));
        out.put(RATE, line.rate() == null ? "" : line.rate().toPlainString());
        out.put(DAY, line.day().toString());
        out.put(NOTE, line.note());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(AMOUNT));
    }
}
