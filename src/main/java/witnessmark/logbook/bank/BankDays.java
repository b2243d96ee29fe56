package witnessmark.logbook.bank;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Days as banks print them: one pattern for a whole column. */
final class BankDays {
    /** In the order in which they are tried; a day before a month before a month before a day. */
    static final List<String> PATTERNS = List.of(
            "uuuu-M-d",
            "uuuu/M/d",
            "uuuuMMdd",
            "d.M.uuuu",
            "d/M/uuuu",
            "d-M-uuuu",
            "d.M.uu",
            "d/M/uu",
            "d MMM uuuu",
            "d-MMM-uuuu",
            "M/d/uuuu",
            "M-d-uuuu",
            "M/d/uu");

    private BankDays() {}

    /** The day a text says by a pattern. A time behind it is left out. */
    static Optional<LocalDate> read(String text, String pattern) {
        String day = text.replaceFirst("[T ]\\d{1,2}:\\d{2}.*$", "").strip();
        try {
            return Optional.of(LocalDate.parse(
                    day, DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH).withResolverStyle(ResolverStyle.STRICT)));
        } catch (DateTimeException | IllegalArgumentException no) {
            return Optional.empty();
        }
    }
}
