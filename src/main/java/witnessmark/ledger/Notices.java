package witnessmark.ledger;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Notice;
import witnessmark.domain.Part;

/** Which parts a maker's notice means. */
public final class Notices {
    private Notices() {}

    /**
     * Every part it means, wherever it is now, in the order written. Batch and serials are compared without spaces,
     * dashes and case, as people write them.
     */
    public static List<Entry<Part>> parts(Facts facts, Notice notice) {
        Set<String> marks = Arrays.stream(notice.marks().split(";"))
                .map(Notices::plain)
                .filter(mark -> !mark.isEmpty())
                .collect(Collectors.toSet());
        String batch = plain(notice.batch());
        return facts.of(Part.class)
                .where(part -> (notice.design() == null || notice.design().equals(part.design()))
                        && (batch.isEmpty() || batch.equals(plain(part.batch())))
                        && (marks.isEmpty() || marks.contains(plain(part.mark()))));
    }

    private static String plain(String written) {
        return written.replaceAll("[\\s\\-]", "").toLowerCase(Locale.ROOT);
    }
}
