package witnessmark.desktop.shell;

import org.jspecify.annotations.Nullable;

/**
 * A row of the results: something found, the heading of a group, or what shows all of a group.
 *
 * @param open null for a heading
 * @param stays whether the results stay when it is opened
 */
record FoundRow(String text, String note, @Nullable Runnable open, boolean stays) {
    static FoundRow heading(String group) {
        return new FoundRow(group, "", null, true);
    }

    static FoundRow of(Found found) {
        return new FoundRow(found.title(), found.note(), found.open(), false);
    }

    /** What shows others in the results' place. */
    static FoundRow holding(Found found, Runnable show) {
        return new FoundRow(found.title(), found.note(), show, true);
    }

    static FoundRow all(String words, Runnable show) {
        return new FoundRow(words, "", show, true);
    }

    boolean isHeading() {
        return open == null;
    }

    @Override
    public String toString() {
        return text;
    }
}
