package witnessmark.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * An amount of money, exact, in whole minor units of its currency. It may be below nothing: a credit, a debt.
 *
 * @param minor how many minor units (cents of EUR, whole yen of JPY, thousandths of KWD), ISO 4217
 * @param currency in which currency
 */
public record Money(long minor, Currency currency) {
    private static final int CODE_LETTERS = 3;

    public Money {
        if (currency.getDefaultFractionDigits() < 0) {
            throw new IllegalArgumentException(currency.getCurrencyCode() + " is no currency anybody pays in");
        }
    }

    /** No money, in that currency. */
    public static Money none(Currency currency) {
        return new Money(0, currency);
    }

    /**
     * That many units of a currency.
     *
     * @throws NumberFormatException if the figure is finer than the currency's minor unit, or too large
     */
    public static Money of(BigDecimal units, Currency currency) {
        try {
            return new Money(units.movePointRight(digits(currency)).longValueExact(), currency);
        } catch (ArithmeticException e) {
            throw new NumberFormatException(units.toPlainString() + " is finer than " + currency.getCurrencyCode()
                    + " is paid in, or too large");
        }
    }

    /**
     * Reads back what {@link #text()} wrote: a plain decimal, a space, the code of ISO 4217.
     *
     * @throws IllegalArgumentException if the text is no such amount
     */
    public static Money parse(String text) {
        String stripped = text.strip();
        int code = stripped.length() - CODE_LETTERS;
        if (code < 2) {
            throw new IllegalArgumentException("an amount of money is like 520.00 EUR");
        }
        return of(new BigDecimal(stripped.substring(0, code).strip()), Currency.getInstance(stripped.substring(code)));
    }

    /** The amount with all decimals of its currency and the code of ISO 4217: {@code 520.00 EUR}. */
    public String text() {
        return units().toPlainString() + " " + currency.getCurrencyCode();
    }

    /** In whole currency, with all decimals of that currency. */
    public BigDecimal units() {
        return BigDecimal.valueOf(minor, digits(currency));
    }

    /**
     * Both together.
     *
     * @throws IllegalArgumentException if they are in different currencies
     * @throws ArithmeticException if the sum is beyond what can be held
     */
    public Money plus(Money other) {
        return new Money(Math.addExact(minor, same(other).minor), currency);
    }

    /**
     * This less another.
     *
     * @throws IllegalArgumentException if they are in different currencies
     * @throws ArithmeticException if the difference is beyond what can be held
     */
    public Money minus(Money other) {
        return new Money(Math.subtractExact(minor, same(other).minor), currency);
    }

    /** What was paid as what was got, and the other way round. */
    public Money negated() {
        return new Money(Math.negateExact(minor), currency);
    }

    /** Whether it is neither owed nor had. */
    public boolean isNone() {
        return minor == 0;
    }

    /**
     * The same value in another currency, to its nearest minor unit, halves away from nothing.
     *
     * @param rate units of the other currency for one unit of this
     * @param other the other currency
     * @throws ArithmeticException if it is beyond what can be held
     */
    public Money in(Currency other, BigDecimal rate) {
        return new Money(
                units().multiply(rate)
                        .setScale(digits(other), RoundingMode.HALF_UP)
                        .unscaledValue()
                        .longValueExact(),
                other);
    }

    private Money same(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(currency + " and " + other.currency + " are not added without a rate");
        }
        return other;
    }

    private static int digits(Currency currency) {
        return currency.getDefaultFractionDigits();
    }
}
