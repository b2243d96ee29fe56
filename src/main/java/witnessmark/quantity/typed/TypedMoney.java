package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Money;

/**
 * An amount of money as people write it: {@code 520}, {@code 1 037.50}, {@code 1.037,50 €}, {@code GBP 24}, {@code -16}.
 * A bare figure is in the field's own currency. Where a point and a comma both occur, the last stands before decimals.
 * One of them alone before three digits is asked about where the currency is paid in less, since it may set thousands
 * apart. What is finer than the currency is paid in is not read.
 */
public final class TypedMoney {
    private static final Map<String, String> SIGNS = Map.of("€", "EUR", "£", "GBP", "¥", "JPY", "$", "USD");
    private static final Pattern FORM = Pattern.compile("(?<sign>-)? ?(?<before>[a-z]{3}|[€£¥$])? ?(?<minus>-)? ?"
            + "(?<figure>[0-9][0-9 .,'’]*?|[.,][0-9]+) ?(?<after>[a-z]{3}|[€£¥$])?");
    private static final Pattern SET_APART =
            Pattern.compile("[0-9]{1,3}(?:(?<apart>[ .,'’])[0-9]{3})" + "(?:\\k<apart>[0-9]{3})*|[0-9]+");
    private static final String EXAMPLE = "520";

    private TypedMoney() {}

    /**
     * Reads an amount.
     *
     * @param text as typed
     * @param own the currency of a bare figure
     */
    public static Typed<Money> read(String text, Currency own) {
        Typed<Money> unreadable = new Typed.Unreadable<>(List.of(EXAMPLE));
        String plain = Plain.of(text);
        Matcher form = plain == null ? null : FORM.matcher(plain);
        if (form == null
                || !form.matches()
                || form.group("before") != null && form.group("after") != null
                || form.group("sign") != null && form.group("minus") != null) {
            return unreadable;
        }
        String named = form.group("before") == null ? form.group("after") : form.group("before");
        Currency currency = named == null ? own : currency(named, own);
        if (currency == null) {
            return unreadable;
        }
        boolean below = form.group("sign") != null || form.group("minus") != null;
        return figures(form.group("figure"), currency, below, text, unreadable);
    }

    /** A figure of one unit of a currency in another: {@code 0.8573}, {@code 1,17}. */
    public static Typed<BigDecimal> rate(String text) {
        String plain = Plain.of(text);
        Numeral figure = plain == null ? null : Numeral.at(plain, 0);
        boolean whole = figure != null && plain != null && figure.end() == plain.length();
        return figure != null && whole && figure.value().signum() > 0
                ? new Typed.Read<>(figure.value(), text)
                : new Typed.Unreadable<>(List.of("0.8573"));
    }

    private static Typed<Money> figures(
            String figure, Currency currency, boolean below, String text, Typed<Money> unreadable) {
        int point = Math.max(figure.lastIndexOf('.'), figure.lastIndexOf(','));
        Money apart = money(SET_APART.matcher(figure).matches() ? digits(figure) : null, currency, below);
        if (point < 0) {
            return apart == null ? unreadable : new Typed.Read<>(apart, text);
        }
        String before = figure.substring(0, point);
        String after = figure.substring(point + 1);
        boolean one = before.indexOf('.') < 0 && before.indexOf(',') < 0;
        boolean sameAgain = before.indexOf(figure.charAt(point)) >= 0;
        boolean wellSet = before.isEmpty() || SET_APART.matcher(before).matches();
        BigDecimal decimal = sameAgain || !wellSet || !after.matches("[0-9]+")
                ? null
                : new BigDecimal((before.isEmpty() ? "0" : digits(before)) + "." + after);
        int digits = currency.getDefaultFractionDigits();
        Money exact = after.length() <= digits ? money(decimal, currency, below) : null;
        if (exact != null) {
            return new Typed.Read<>(exact, text);
        }
        if (apart != null && one && decimal != null && digits > 0) {
            return new Typed.Two<>(apart, nearest(decimal, currency, below));
        }
        return apart == null ? unreadable : new Typed.Read<>(apart, text);
    }

    private static Money nearest(BigDecimal figure, Currency currency, boolean below) {
        BigDecimal rounded = figure.setScale(currency.getDefaultFractionDigits(), RoundingMode.HALF_UP);
        return Money.of(below ? rounded.negate() : rounded, currency);
    }

    private static @Nullable Money money(@Nullable String figure, Currency currency, boolean below) {
        return figure == null ? null : money(new BigDecimal(figure), currency, below);
    }

    /** The amount, or null where the currency is not paid so finely, or nobody has so much. */
    private static @Nullable Money money(@Nullable BigDecimal figure, Currency currency, boolean below) {
        if (figure == null) {
            return null;
        }
        try {
            return Money.of(below ? figure.negate() : figure, currency);
        } catch (NumberFormatException finerOrTooLarge) {
            return null;
        }
    }

    private static String digits(String figure) {
        return figure.replaceAll("[^0-9]", "");
    }

    private static @Nullable Currency currency(String named, Currency own) {
        if (own.getSymbol(Locale.ROOT).equals(named) || own.getCurrencyCode().endsWith("D") && named.equals("$")) {
            return own;
        }
        try {
            Currency found =
                    Currency.getInstance(SIGNS.getOrDefault(named, named).toUpperCase(Locale.ROOT));
            return found.getDefaultFractionDigits() < 0 ? null : found;
        } catch (IllegalArgumentException nobodyPaysInIt) {
            return null;
        }
    }
}
