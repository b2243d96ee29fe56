package witnessmark.fit.result;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What marks of contact at the crowns fit.
 *
 * @param rises how far each marked piston came up, in millimetres by cylinder
 * @param fits what may have made that, the least left over first
 * @param toldApart whether the first fits better than the next by more than a mark is read to
 */
public record MarkReading(SortedMap<Integer, Double> rises, List<Fit> fits, boolean toldApart) {
    public MarkReading {
        rises = Collections.unmodifiableSortedMap(new TreeMap<>(rises));
        fits = List.copyOf(fits);
    }

    /**
     * One way the marks may have come about.
     *
     * @param how which
     * @param cylinder the one that stands apart, or null
     * @param amount by how much pistons came up in it, in millimetres; for bending at the throw that gives most
     * @param leftOver root of the mean square of what it leaves, over as many as are free, in millimetres
     * @param residuals what it leaves of each, by cylinder
     */
    public record Fit(
            How how, @Nullable Integer cylinder, double amount, double leftOver, Map<Integer, Double> residuals) {
        public Fit {
            residuals = Map.copyOf(residuals);
        }
    }

    /** What may have brought the pistons up. */
    public enum How {
        ALIKE_IN_ALL,
        BENDING,
        ONE_APART
    }
}
