package witnessmark.desktop.shell;

import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.task.Latest;
import witnessmark.desktop.task.Tasks;

/**
 * What a place with a list owes the window: the day beside its title, how many wait in it, and that a record asked for comes
 * into view, though it may come only with the reading under way. Event thread only.
 */
public final class ListInView {
    private static final Logger LOG = LoggerFactory.getLogger(ListInView.class);

    private final Desk window;
    private final PlaceId place;
    private final Predicate<String> choose;
    private final Latest counting;
    private @Nullable String wanted;
    private boolean shown;

    /**
     * @param choose brings the record of that identity, in text form, into view; false when it is not there
     */
    public ListInView(Desk window, PlaceId place, Tasks tasks, Predicate<String> choose) {
        this.window = window;
        this.place = place;
        this.choose = choose;
        this.counting = new Latest(tasks);
    }

    /** Brings a record into view, at once or with the rows that are being read. */
    public void open(String record) {
        wanted = record;
        if (shown) {
            chooseWanted();
        }
    }

    /**
     * The rows that were read are there.
     *
     * @param day beside the title
     * @param waiting how many of them wait
     */
    public void shown(String day, int waiting) {
        shown = true;
        window.heading(place, day);
        window.waiting(place, waiting);
        chooseWanted();
    }

    /**
     * Counts what waits while the place is not in view.
     *
     * @param name what is being done, in words
     * @param count off the event thread
     */
    public void recount(String name, Callable<Integer> count) {
        counting.run(
                name,
                count,
                waiting -> window.waiting(place, waiting),
                failure -> LOG.error("what waits in {} could not be counted", place, failure));
    }

    private void chooseWanted() {
        String record = wanted;
        if (record != null && choose.test(record)) {
            wanted = null;
        }
    }
}
