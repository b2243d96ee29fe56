package witnessmark.logbook.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import witnessmark.domain.SkimShadow;
import witnessmark.quantity.Length;

/**
 * A pass of the cutter as typed: {@code 0.05 shadow between 2 and 3}, {@code 0.02 clean}, {@code 0.04}.
 *
 * @param depth above 0
 * @param shadow what was seen after it
 * @param where where the shadow stayed; empty when not said
 */
record PassLine(Length depth, SkimShadow shadow, String where) {
    private static final Pattern LINE =
            Pattern.compile("(\\d+(?:[.,]\\d+)?|[.,]\\d+)(?: ?mm)?(?:[ :,;]+(.*))?", Pattern.CASE_INSENSITIVE);
    private static final Pattern CLEAN = Pattern.compile("(clean|gone|none|no shadow)\\b.*");
    private static final Pattern LEFT = Pattern.compile("(?i)(?:shadow )?(?:left\\b[ ,]*)?(.*)");

    /** Every pass, a line each or apart by a plus; empty when one of them cannot be read. */
    static Optional<List<PassLine>> read(String text) {
        List<PassLine> passes = new ArrayList<>();
        for (String line : text.split("\\R|\\+")) {
            if (!line.isBlank()) {
                Matcher found = LINE.matcher(line.strip());
                if (!found.matches()) {
                    return Optional.empty();
                }
                Length depth =
                        Length.ofMillimetres(new BigDecimal(found.group(1).replace(',', '.')));
                if (depth.nanometres() <= 0) {
                    return Optional.empty();
                }
                passes.add(
                        of(depth, found.group(2) == null ? "" : found.group(2).strip()));
            }
        }
        return Optional.of(passes);
    }

    private static PassLine of(Length depth, String seen) {
        if (seen.isEmpty()) {
            return new PassLine(depth, SkimShadow.NOT_SAID, "");
        }
        if (CLEAN.matcher(seen.toLowerCase(Locale.ROOT)).matches()) {
            return new PassLine(depth, SkimShadow.CLEAN, "");
        }
        Matcher left = LEFT.matcher(seen);
        return new PassLine(
                depth, SkimShadow.LEFT, left.matches() ? left.group(1).strip() : seen);
    }
}
