package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/**
 * A fact as it stands in the logbook.
 *
 * @param id which one
 * @param fact what was written
 * @param standing whether it counts
 * @param struckBecause why it was struck out, or null
 * @param rev how many times it was written; 1 when new
 */
public record Entry<F extends Fact>(
        Id<F> id, F fact, Standing standing, @Nullable String struckBecause, long rev) {
    public Entry {
        if (rev < 1) {
            throw new IllegalArgumentException("a written entry has a revision of 1 or more");
        }
    }

    public boolean inForce() {
        return standing == Standing.IN_FORCE;
    }
}
