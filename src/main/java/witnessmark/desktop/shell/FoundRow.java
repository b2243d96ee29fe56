package witnessmark.desktop.shell;

import org.jspecify.annotations.Nullable;

/** A row of the results: something found, or the heading of a group. */
record FoundRow(String text, String note, @Nullable Runnable open) {
    static FoundRow heading(String group) {
        return new FoundRow(group, "", null);
    }

    static FoundRow of(Found found) {
        return new FoundRow(found.title(), found.note(), found.open());
    }

    boolean isHeading() {
        return open == null;
    }

    @Override
    public String toString() {
        return text;
    }
}
