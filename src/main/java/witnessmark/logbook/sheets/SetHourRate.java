package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import witnessmark.cost.SeasonTotals;
import witnessmark.domain.Fact;
import witnessmark.domain.HourRate;
import witnessmark.domain.RateKind;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Money;

/** Says what an hour is valued at from a day on. */
public final class SetHourRate implements LogSheet {
    public static final SheetField KIND = choice("rate_kind", 1);
    public static final SheetField AMOUNT = text("rate_amount", 1);
    public static final SheetField FROM = of("rate_from", FieldKind.DAY);
    public static final SheetField NOTE = text("note", 4);

    @Override
    public String key() {
        return "hour_rate";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("hour_rate", List.of(KIND, AMOUNT, FROM), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(KIND, RateKind.OWN_LABOUR.code(), FROM, sight.today().toString());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(KIND) ? Choice.words(RateKind.values()) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        RateKind kind = in.word(KIND, RateKind.class);
        in.needed(AMOUNT);
        Money amount = new ReadValues(in).money(AMOUNT);
        if (amount != null && amount.minor() < 0) {
            in.wrong(AMOUNT, ProblemKind.LESS_THAN_NOTHING, AMOUNT, in.text(AMOUNT), "42");
        }
        if (amount != null && !amount.currency().equals(in.sight().currency())) {
            in.wrong(
                    AMOUNT,
                    ProblemKind.OTHER_CURRENCY,
                    AMOUNT,
                    in.sight().currency().getCurrencyCode());
        }
        LocalDate from = new ReadValues(in).plannedDay(FROM);
        if (kind != null && from != null) {
            SeasonTotals.rate(in.sight().facts(), kind, from)
                    .ifPresent(rate -> in.note(KIND, SheetNote.of("rate_now", rate.amount(), rate.from())));
        }
        if (in.fine() && kind != null && amount != null && from != null) {
            in.make(AMOUNT, new HourRate(kind, amount, from, in.text(NOTE)));
        }
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof HourRate rate)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(KIND, rate.kind().code());
        out.put(AMOUNT, TypedAmount.text(rate.amount(), sight));
        out.put(FROM, rate.from().toString());
        out.put(NOTE, rate.note());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(AMOUNT));
    }
}
