package witnessmark.desktop.shell;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing found.
 *
 * @param title what it is: "Valve springs VS-03"
 * @param note where, or since when, in second ink; may be empty
 * @param open goes there; run on the event thread; null when there is nowhere to go
 * @param within what is shown in the results' place when there is nowhere to go; with nothing within it only says
 */
public record Found(String title, String note, @Nullable Runnable open, List<Found> within) {
    public Found {
        within = List.copyOf(within);
    }

    /** Something that is opened. */
    public Found(String title, String note, Runnable open) {
        this(title, note, open, List.of());
    }

    /** Something that holds others: an event, its runs. With none it can only be read. */
    public static Found holding(String title, String note, List<Found> within) {
        return new Found(title, note, null, within);
    }
}
