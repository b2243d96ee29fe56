package witnessmark.store;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a copy of a logbook is called: the name of the file it was made of, and when. Names sort by time.
 *
 * @param stem name of the file it was made of, without its ending
 * @param made when
 */
record CopyName(String stem, Instant made) {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmssSSS'Z'").withZone(ZoneOffset.UTC);
    private static final Pattern NAME = Pattern.compile("(.*)-(\\d{8}T\\d{9}Z)\\.witness");
    private static final String AS_IT_IS = "-as-it-is.witness";

    /** The name of a file as a copy's; empty when it is none. */
    static Optional<CopyName> of(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        if (!name.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new CopyName(name.group(1), STAMP.parse(name.group(2), Instant::from)));
        } catch (DateTimeParseException e) {
            return Optional.empty(); // the thirteenth month, say
        }
    }

    /** The name of a logbook's file without its ending. */
    static String stem(Path logbook) {
        return String.valueOf(logbook.getFileName()).replaceFirst("\\.witness$", "");
    }

    /** Of a copy of a logbook that is not as it was written; it never takes the place of a good one. */
    static String asItIs(Path logbook) {
        return stem(logbook) + AS_IT_IS;
    }

    static boolean isAsItIs(Path file) {
        return String.valueOf(file.getFileName()).endsWith(AS_IT_IS);
    }

    /** Of what stood in the place of a restored logbook. */
    static String replaced(Path logbook, Instant when) {
        return stem(logbook) + "-replaced-" + STAMP.format(when) + ".witness";
    }

    String file() {
        return stem + "-" + STAMP.format(made) + ".witness";
    }
}
