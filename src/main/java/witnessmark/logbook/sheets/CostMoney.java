package witnessmark.logbook.sheets;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.SeasonTotals;
import witnessmark.cost.Work;
import witnessmark.domain.CostLine;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.RateKind;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** What belongs to the amount of a cost: tax, what came back, what is carried on, and the days that go with them. */
record CostMoney(
        @Nullable Money tax,
        Money back,
        Money carried,
        @Nullable LocalDate until,
        @Nullable LocalDate used,
        @Nullable Id<Event> usedAt,
        @Nullable BigDecimal rate,
        @Nullable LocalDate refundBy,
        @Nullable LocalDate charged) {
    /** What is typed; null where there is no amount yet. */
    static @Nullable CostMoney read(ReadSheet in, boolean valued, @Nullable Money paid, @Nullable LocalDate day) {
        if (paid == null) {
            return null;
        }
        Currency currency = paid.currency();
        ReadValues values = new ReadValues(in);
        Money none = Money.none(currency);
        LocalDate charged = in.text(WriteCost.CUSTOMER).isEmpty() ? null : values.day(WriteCost.CHARGED);
        if (valued) {
            return new CostMoney(null, none, none, null, null, null, null, null, charged);
        }
        Money tax = in.text(WriteCost.TAX).isEmpty() ? null : TypedAmount.beside(in, WriteCost.TAX, currency);
        Money back = TypedAmount.beside(in, WriteCost.BACK, currency);
        Money carried = TypedAmount.beside(in, WriteCost.CARRIED, currency);
        boolean keeps = !carried.isNone();
        LocalDate until = keeps ? values.dayAhead(WriteCost.UNTIL) : null;
        LocalDate used = keeps ? values.day(WriteCost.USED) : null;
        if (keeps && until == null) {
            in.note(WriteCost.UNTIL, SheetNote.of("carried_keeps"));
        }
        if (used != null && day != null && used.isBefore(day)) {
            in.wrong(WriteCost.USED, ProblemKind.EARLIER_THAN, WriteCost.USED, used, day);
        }
        if ((!back.isNone() || keeps) && back.minor() > paid.minor() - carried.minor()) {
            SheetField first = back.isNone() ? WriteCost.CARRIED : WriteCost.BACK;
            in.wrong(first, ProblemKind.MORE_BACK_THAN_PAID, back.plus(carried), paid);
        }
        return new CostMoney(
                tax,
                back,
                carried,
                until,
                used,
                used == null ? null : MoneyChoices.picked(in, WriteCost.USED_AT, Event.class),
                TypedAmount.rate(in, WriteCost.RATE, paid),
                values.dayAhead(WriteCost.REFUND_BY),
                charged);
    }

    /** What stands in the fields of money for a written cost. */
    static void write(CostLine line, Map<SheetField, String> out, SheetSight sight) {
        Integer minutes = line.minutes();
        out.put(WriteCost.AMOUNT, TypedAmount.text(line.paid(), sight));
        out.put(WriteCost.HOURS, minutes == null ? "" : AsText.hours(time(minutes)));
        out.put(WriteCost.RATE, line.rate() == null ? "" : line.rate().toPlainString());
        out.put(WriteCost.TAX, TypedAmount.text(line.tax(), sight));
        out.put(WriteCost.BACK, TypedAmount.textUnlessNone(line.recovered(), sight));
        out.put(WriteCost.CARRIED, TypedAmount.textUnlessNone(line.carried(), sight));
        out.put(WriteCost.UNTIL, MoneyChoices.text(line.carriedUntil()));
        out.put(WriteCost.USED, MoneyChoices.text(line.carriedUsed()));
        out.put(WriteCost.USED_AT, MoneyChoices.text(line.carriedTo()));
        out.put(WriteCost.SUPPLIER, line.supplier());
        out.put(WriteCost.INVOICE, line.invoice());
        out.put(WriteCost.REFUND_BY, MoneyChoices.text(line.refundBy()));
        out.put(WriteCost.CUSTOMER, line.customer());
        out.put(WriteCost.CHARGED, MoneyChoices.text(line.chargedOn()));
    }

    /** Whether own work comes to what is written at the rate of its day, so that its hours alone say it. */
    static boolean isWorthItsHours(CostLine line, SheetSight sight) {
        Integer minutes = line.minutes();
        return minutes != null
                && SeasonTotals.rate(sight.facts(), RateKind.OWN_LABOUR, line.day())
                        .filter(rate ->
                                Work.valued(rate.amount(), time(minutes)).equals(line.paid()))
                        .isPresent();
    }

    private static RunningTime time(int minutes) {
        return RunningTime.ofMinutes(BigDecimal.valueOf(minutes));
    }
}
