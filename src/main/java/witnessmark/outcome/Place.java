package witnessmark.outcome;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where in a text file a problem stands.
 *
 * @param file the file's name within its folder
 * @param row the line as an editor counts it, heading = 1; 0 when the whole file is meant
 * @param named the row by its name and its id, as far as it has them, so that it is found where a cell spans lines; empty
 *     when it has neither or the whole file is meant
 * @param column the heading of the column, or null when the whole row is meant
 */
public record Place(
        String file, long row, String named, @Nullable String column) {
    public Place {
        if (row < 0) {
            throw new IllegalArgumentException("rows count from 1");
        }
    }

    /** A place of which no row is named. */
    public Place(String file, long row, @Nullable String column) {
        this(file, row, "", column);
    }

    /** Whether it is the same place; how its row is called says nothing of where it is. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Place that
                && file.equals(that.file)
                && row == that.row
                && Objects.equals(column, that.column);
    }

    @Override
    public int hashCode() {
        return Objects.hash(file, row, column);
    }

    /** Another column of the same row, or the whole row for null. */
    public Place in(@Nullable String other) {
        return new Place(file, row, named, other);
    }
}
