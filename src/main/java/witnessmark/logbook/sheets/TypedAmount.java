package witnessmark.logbook.sheets;

import java.math.BigDecimal;
import java.util.Currency;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Money;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedMoney;

/** Reads amounts of money on sheets: the amount itself, what belongs to it in the same currency, and its rate of the day. */
final class TypedAmount {
    private TypedAmount() {}

    /** Whether an amount typed in a field is in another currency than the team's, so that its rate is asked for. */
    static boolean isForeign(SheetField field, SheetTyped typed, SheetSight sight) {
        Currency home = sight.currency();
        return TypedMoney.read(typed.text(field), home)
                .only()
                .filter(money -> !money.currency().equals(home))
                .isPresent();
    }

    /** The amount; it has to be there. Below nothing it is a credit note, and that is said. */
    static @Nullable Money needed(ReadSheet in, SheetField field) {
        in.needed(field);
        Money money = new ReadValues(in).money(field);
        if (money != null && money.minor() < 0) {
            in.note(field, SheetNote.echo("credit_note", money.negated()));
        }
        return money;
    }

    /** An amount in the currency of another, nothing or more; none where the field is empty. */
    static Money beside(ReadSheet in, SheetField field, Currency currency) {
        Money money = new ReadValues(in).echoed(field, text -> TypedMoney.read(text, currency));
        if (money != null && (money.minor() < 0 || !money.currency().equals(currency))) {
            in.wrong(field, ProblemKind.OTHER_CURRENCY, field, currency.getCurrencyCode());
        }
        return money == null || !money.currency().equals(currency) ? Money.none(currency) : money;
    }

    /** The rate of the day; it has to be there for an amount in another currency, and is null in the team's own. */
    static @Nullable BigDecimal rate(ReadSheet in, SheetField field, @Nullable Money money) {
        if (money == null || money.currency().equals(in.sight().currency())) {
            return null;
        }
        String home = in.sight().currency().getCurrencyCode();
        in.note(field, SheetNote.of("rate_of_day", money.currency().getCurrencyCode(), home));
        in.needed(field);
        BigDecimal rate = new ReadValues(in).read(field, TypedMoney::rate);
        if (rate != null) {
            in.note(field, SheetNote.echo("understood", money.in(in.sight().currency(), rate)));
        }
        return rate;
    }

    /** As text that is read back as the same: a bare figure in the team's currency. */
    static String text(@Nullable Money money, SheetSight sight) {
        if (money == null) {
            return "";
        }
        return money.currency().equals(sight.currency()) ? money.units().toPlainString() : money.text();
    }

    /** The same, and empty for nothing. */
    static String textUnlessNone(@Nullable Money money, SheetSight sight) {
        return money == null || money.isNone() ? "" : text(money, sight);
    }

    /** What a text comes to, where it is one amount. */
    static @Nullable Money read(String text, SheetSight sight) {
        Typed<Money> typed = TypedMoney.read(text, sight.currency());
        return typed.only().orElse(null);
    }
}
