package witnessmark.study;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import witnessmark.domain.ReadingKind;

/** Places as a crew says them: {@code 4}, {@code cylinder 4}, {@code exhaust 4B}. */
final class Places {
    private static final Pattern NUMBERED = Pattern.compile("(.*?)\\s*(\\d{1,2})\\s*([A-Za-z]?)");

    /** By what is there, then its number, then its letter; what has no number after those that have. */
    static final Comparator<String> ORDER = Comparator.comparing(
                    (String place) -> beside(place).isEmpty())
            .thenComparing(place -> beside(place).orElse(""))
            .thenComparingInt(Places::number)
            .thenComparing(Comparator.naturalOrder());

    private Places() {}

    /** What a numbered place is one of, as "exhaust" is for exhaust 4B; empty for a place without a number. */
    static Optional<String> beside(String place) {
        Matcher numbered = NUMBERED.matcher(place.strip());
        return numbered.matches() ? Optional.of(numbered.group(1).toLowerCase(Locale.ROOT)) : Optional.empty();
    }

    /** Whether what is read at one numbered place should be read alike at the others. */
    static boolean alike(ReadingKind kind) {
        return switch (kind) {
            case LEAK_DOWN, COMPRESSION, SPRING_FORCE, LASH -> true;
            default -> false;
        };
    }

    private static int number(String place) {
        Matcher numbered = NUMBERED.matcher(place.strip());
        return numbered.matches() ? Integer.parseInt(numbered.group(2)) : 0;
    }
}
