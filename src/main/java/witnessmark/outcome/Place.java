package witnessmark.outcome;

import org.jspecify.annotations.Nullable;

/**
 * Where in a text file a problem stands.
 *
 * @param file the file's name within its folder
 * @param row the line as an editor counts it, heading = 1; 0 when the whole file is meant
 * @param column the heading of the column, or null when the whole row is meant
 */
public record Place(String file, long row, @Nullable String column) {
    public Place {
        if (row < 0) {
            throw new IllegalArgumentException("rows count from 1");
        }
    }
}
