package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A decimal figure inside a plain text. A comma or a point stands before decimals; thousands are set apart by spaces
 * or not at all.
 *
 * @param value the figure
 * @param fractional whether it was written with decimals
 * @param end where the text goes on
 */
record Numeral(BigDecimal value, boolean fractional, int end) {
    private static final Pattern FORM =
            Pattern.compile("(?<sign>[+-] ?)?(?<whole>[0-9]{1,3}(?: [0-9]{3})+|[0-9]+)?(?:[.,](?<part>[0-9]+))?");
    private static final Pattern WHOLE =
            Pattern.compile("[0-9]+|[1-9][0-9]{0,2}(?<apart>[ .,'’])[0-9]{3}(?:\\k<apart>[0-9]{3})*");

    /** The longest figure that starts there, or null when none does. */
    static @Nullable Numeral at(String plain, int from) {
        Matcher form = FORM.matcher(plain).region(from, plain.length());
        if (!form.lookingAt()) {
            return null;
        }
        String whole = form.group("whole");
        String part = form.group("part");
        if (whole == null && part == null) {
            return null;
        }
        String sign = form.group("sign");
        BigDecimal size =
                new BigDecimal((whole == null ? "0" : whole.replace(" ", "")) + (part == null ? "" : "." + part));
        boolean below = sign != null && sign.startsWith("-");
        return new Numeral(below ? size.negate() : size, part != null, form.end());
    }

    /**
     * The figure of a text that is one whole number, or null. Where decimals make no sense, a comma or point before
     * three digits sets thousands apart.
     */
    static @Nullable BigDecimal whole(String plain) {
        return WHOLE.matcher(plain).matches() ? new BigDecimal(plain.replaceAll("[^0-9]", "")) : null;
    }
}
