package witnessmark.desktop.shell;

import org.jspecify.annotations.Nullable;

/**
 * Where somebody was: a page, and the record looked at there.
 *
 * @param page the name of the place, or of a page of the shell itself
 * @param record the text form of the record's id, {@code null} for none in particular
 */
public record Visit(String page, @Nullable String record) {
    public static Visit to(PlaceId place) {
        return new Visit(place.name(), null);
    }

    public static Visit to(PlaceId place, String record) {
        return new Visit(place.name(), record);
    }
}
