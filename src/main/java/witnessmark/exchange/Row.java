package witnessmark.exchange;

import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Standing;

/**
 * A row whose fields could all be read.
 *
 * @param line where it begins in its file
 * @param label what it is called in a problem
 * @param id its id, a new one when the row has none
 * @param idGiven whether the row has one
 * @param values of its components; where it refers to its own kind there is only {@link #LATER}
 * @param own what it refers to in its own kind, as written, by component
 * @param standing whether it counts
 * @param struckBecause why it was struck out, or null
 */
record Row(
        long line,
        String label,
        UUID id,
        boolean idGiven,
        @Nullable Object[] values,
        Map<Integer, String> own,
        Standing standing,
        @Nullable String struckBecause) {
    /** Stands for a row of the same file until all of them are known. */
    static final UUID LATER = new UUID(0, 0);
}
