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
import witnessmark.domain.Car;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.IncomeKind;
import witnessmark.domain.IncomeLine;
import witnessmark.quantity.Money;

/** Writes down what came in. */
public final class WriteIncome implements LogSheet {
    public static final SheetField WHAT = text("income_what", 2);
    public static final SheetField FROM = text("income_from", 2);
    public static final SheetField EVENT = choice("event", 1);
    public static final SheetField CAR = choice("car", 1);
    public static final SheetField KIND = choice("income_kind", 1);
    public static final SheetField AMOUNT = text("cost_amount", 1);
    public static final SheetField RATE = text("cost_rate", 1);
    public static final SheetField DAY = of("day", FieldKind.DAY);
    public static final SheetField NOTE = text("note", 4);

    @Override
    public String key() {
        return "write_income";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "income", List.of(WHAT, KIND, AMOUNT), List.of(DAY, EVENT, CAR, RATE), List.of(FROM), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(KIND, IncomeKind.SPONSOR.code(), DAY, sight.today().toString());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(EVENT, DAY, KIND);
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
            case "income_kind" -> Choice.words(IncomeKind.values());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        String what = in.needed(WHAT);
        IncomeKind kind = in.word(KIND, IncomeKind.class);
        Money amount = TypedAmount.needed(in, AMOUNT);
        BigDecimal rate = TypedAmount.rate(in, RATE, amount);
        LocalDate day = new ReadValues(in).neededDay(DAY);
        MoneyChoices.season(in, DAY, EVENT, day);
        if (in.fine() && kind != null && amount != null && day != null) {
            in.make(
                    AMOUNT,
                    new IncomeLine(
                            day,
                            what,
                            kind,
                            MoneyChoices.picked(in, EVENT, Event.class),
                            MoneyChoices.picked(in, CAR, Car.class),
                            amount,
                            rate,
                            in.text(FROM),
                            in.text(NOTE)));
        }
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof IncomeLine line)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(WHAT, line.what());
        out.put(FROM, line.from());
        out.put(EVENT, MoneyChoices.text(line.event()));
        out.put(CAR, MoneyChoices.text(line.car()));
        out.put(KIND, line.kind().code());
        out.put(AMOUNT, TypedAmount.text(line.amount(), sight));
        out.put(RATE, line.rate() == null ? "" : line.rate().toPlainString());
        out.put(DAY, line.day().toString());
        out.put(NOTE, line.note());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(WHAT));
    }
}
