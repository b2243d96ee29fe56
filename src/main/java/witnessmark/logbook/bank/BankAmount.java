package witnessmark.logbook.bank;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import witnessmark.quantity.Money;

/**
 * An amount as banks print it: {@code -1.037,50}, {@code 1,037.50-}, {@code (16.00)}, {@code 16,00 S}, {@code 1 037.50
 * CR}. What stands before decimals is known for the whole file and not guessed from one figure.
 */
final class BankAmount {
    private static final Pattern FORM =
            Pattern.compile("(?<sign>[-+(])?(?<figure>[0-9.,' ]*[0-9])(?<after>-|\\)|" + "cr|dr|h|s|c|d)?");

    private BankAmount() {}

    /**
     * Reads one.
     *
     * @param decimal a point or a comma
     * @return empty when it is no amount, or finer than the currency is paid in
     */
    static Optional<Money> read(String text, char decimal, Currency currency) {
        String plain = text.replace('\u00A0', ' ')
                .replace('\u202F', ' ')
                .replace('\u2009', ' ')
                .replace('\u2212', '-')
                .replace('’', '\'')
                .toLowerCase(Locale.ROOT)
                .replaceAll("[€£$¥]|\\b" + currency.getCurrencyCode().toLowerCase(Locale.ROOT) + "\\b", "")
                .replace(" ", "");
        Matcher form = FORM.matcher(plain);
        if (!form.matches()) {
            return Optional.empty();
        }
        String figure = form.group("figure");
        char apart = decimal == '.' ? ',' : '.';
        int point = figure.indexOf(decimal);
        String whole = point < 0 ? figure : figure.substring(0, point);
        String part = point < 0 ? "" : figure.substring(point + 1);
        if (!part.matches("[0-9]*") || !wellSet(whole, apart)) {
            return Optional.empty();
        }
        return money(whole.replaceAll("[^0-9]", ""), part, below(form), currency);
    }

    private static Optional<Money> money(String whole, String part, boolean below, Currency currency) {
        try {
            BigDecimal size = new BigDecimal((whole.isEmpty() ? "0" : whole) + (part.isEmpty() ? "" : "." + part));
            BigDecimal kept = size.stripTrailingZeros().scale() <= currency.getDefaultFractionDigits()
                    ? size.setScale(currency.getDefaultFractionDigits())
                    : size;
            return Optional.of(Money.of(below ? kept.negate() : kept, currency));
        } catch (NumberFormatException finerOrTooLarge) {
            return Optional.empty();
        }
    }

    private static boolean wellSet(String whole, char apart) {
        String set = Pattern.quote(String.valueOf(apart));
        return whole.matches("[0-9]*")
                || whole.matches("[0-9]{1,3}(" + set + "[0-9]{3})+")
                || whole.matches("[0-9]{1,3}('[0-9]{3})+");
    }

    /** A minus on either side, brackets, or the letters for a debit. */
    private static boolean below(Matcher form) {
        String sign = form.group("sign");
        String after = form.group("after");
        return "-".equals(sign)
                || "(".equals(sign)
                || "-".equals(after)
                || "dr".equals(after)
                || "s".equals(after)
                || "d".equals(after);
    }
}
