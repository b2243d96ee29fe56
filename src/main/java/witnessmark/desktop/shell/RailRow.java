package witnessmark.desktop.shell;

import org.jspecify.annotations.Nullable;

/**
 * One row of the rail: a place, or the heading of a group, which cannot be chosen.
 *
 * @param title what is shown
 * @param place {@code null} for a heading
 * @param note what waits there
 * @param noteWords the same for screen readers, empty when nothing waits
 */
record RailRow(String title, @Nullable PlaceId place, Desk.Note note, String noteWords) {
    boolean isHeading() {
        return place == null;
    }

    /** What type-ahead compares with. */
    @Override
    public String toString() {
        return title;
    }
}
