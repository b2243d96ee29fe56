package witnessmark.study.result;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.HowMarked;

/**
 * One position of a line of a strip report.
 *
 * @param number which cylinder or main bearing, counted from 1; null for all of them
 * @param found what was found there at this strip, the earliest first
 * @param before what was found there at the last strip before that looked there, the earliest first
 */
public record StripCell(@Nullable Integer number, List<Entry<Finding>> found, List<Entry<Finding>> before) {
    private static final Comparator<Entry<Finding>> BADNESS =
            Comparator.comparingInt(finding -> badness(finding.fact().how()));

    public StripCell {
        found = List.copyOf(found);
        before = List.copyOf(before);
    }

    /** What was found that has gone furthest; what nobody judged counts least. Empty where nobody looked. */
    public Optional<Entry<Finding>> worst() {
        return worst(found);
    }

    /** What was found, what has gone furthest first. */
    public List<Entry<Finding>> furthestFirst() {
        return found.stream().sorted(BADNESS.reversed()).toList();
    }

    /** The same at the strip before. */
    public Optional<Entry<Finding>> worstBefore() {
        return worst(before);
    }

    private static Optional<Entry<Finding>> worst(List<Entry<Finding>> of) {
        return of.stream().max(BADNESS);
    }

    /** How far the worst of it has gone; empty where nobody looked or judged. */
    public Optional<HowMarked> how() {
        return worst().map(finding -> finding.fact().how()).filter(Objects::nonNull);
    }

    /** Whether it has gone further than at the strip before; not where either was not judged. */
    public boolean worse() {
        int was = worstBefore().map(finding -> badness(finding.fact().how())).orElse(-1);
        int is = worst().map(finding -> badness(finding.fact().how())).orElse(-1);
        return was >= 0 && is > was;
    }

    private static int badness(@Nullable HowMarked how) {
        return how == null ? -1 : how.ordinal();
    }
}
