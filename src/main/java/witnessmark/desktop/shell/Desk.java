package witnessmark.desktop.shell;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.task.EventThread;

/**
 * What a place can ask of the window around it: going elsewhere, saying what happened, showing that something waits. It
 * is made before the window and handed to every place. Event thread only.
 */
public final class Desk {
    private final List<Listener> listeners = new ArrayList<>();
    private final Map<PlaceId, Note> notes = new EnumMap<>(PlaceId.class);
    private final Map<PlaceId, String> headings = new EnumMap<>(PlaceId.class);
    private final Map<PlaceId, String> titles = new EnumMap<>(PlaceId.class);

    /** What the rail says beside a place. */
    record Note(int waiting, boolean draft) {
        static final Note NONE = new Note(0, false);
    }

    /** The window, listening. */
    interface Listener {
        void go(Visit visit);

        void goAside(PlaceId place);

        boolean comeBack(PlaceId place);

        void changed();

        void say(String sentence, @Nullable JButton way);

        void notice(String sentence, List<? extends AbstractButton> ways);

        void dismissNotice();

        void notesChanged();

        void headingChanged(PlaceId place);

        void writing(String name);

        void copies(String words, String more, boolean atRisk);
    }

    /** Goes to a place. */
    public void go(PlaceId place) {
        tell(listener -> listener.go(Visit.to(place)));
    }

    /** Goes to a place and opens a record there, by the text form of its id. */
    public void go(PlaceId place, String record) {
        tell(listener -> listener.go(Visit.to(place, record)));
    }

    /** Goes to a place where a page stands in its place for the one in view: the rail goes on showing where one was. */
    public void goAside(PlaceId place) {
        tell(listener -> listener.goAside(place));
    }

    /**
     * The page that stood in a place was left: what was in view when it was put up comes back as it was, unless somebody went
     * elsewhere meanwhile.
     *
     * @return whether it did; otherwise the place itself is what is seen
     */
    public boolean comeBack(PlaceId place) {
        EventThread.require();
        return listeners.stream().map(listener -> listener.comeBack(place)).reduce(false, Boolean::logicalOr);
    }

    /** The logbook changed: the place in view is asked to refresh, the others when they are next visited. */
    public void changed() {
        tell(Listener::changed);
    }

    /** Says what happened, in the status strip: "Saved 21:58". */
    public void say(String sentence) {
        tell(listener -> listener.say(sentence, null));
    }

    /** Says what happened and offers one thing to do about it, mostly to take it back. */
    public void say(String sentence, Caption way, Runnable work) {
        tell(listener -> listener.say(sentence, Buttons.link(way, work)));
    }

    /** Shows the strip under the menu bar until it is dismissed. */
    public void notice(String sentence, List<? extends AbstractButton> ways) {
        tell(listener -> listener.notice(sentence, ways));
    }

    public void dismissNotice() {
        tell(Listener::dismissNotice);
    }

    /** How many things wait in a place; 0 shows nothing. */
    public void waiting(PlaceId place, int count) {
        notes.put(place, new Note(count, note(place).draft()));
        tell(Listener::notesChanged);
    }

    /** Whether a place keeps something typed and not yet saved. */
    public void draft(PlaceId place, boolean kept) {
        notes.put(place, new Note(note(place).waiting(), kept));
        tell(Listener::notesChanged);
    }

    /** The note beside a place's title: the day, "new run". */
    public void heading(PlaceId place, String words) {
        titles.remove(place);
        headings.put(place, words);
        tell(listener -> listener.headingChanged(place));
    }

    /** The title while another page stands in a place, until {@link #heading} is next called for it. */
    public void title(PlaceId place, String title) {
        headings.remove(place);
        titles.put(place, title);
        tell(listener -> listener.headingChanged(place));
    }

    /** Who writes from now on, shown under the logbook's name. */
    public void writing(String name) {
        tell(listener -> listener.writing(name));
    }

    /**
     * Where else the logbook is kept, shown under who writes; empty for nothing.
     *
     * @param more what the tip says
     * @param atRisk whether something saved is on this computer only
     */
    public void copies(String words, String more, boolean atRisk) {
        tell(listener -> listener.copies(words, more, atRisk));
    }

    Note note(PlaceId place) {
        return notes.getOrDefault(place, Note.NONE);
    }

    String heading(PlaceId place) {
        return headings.getOrDefault(place, "");
    }

    /** The title of the page that stands in a place of it; empty while the place itself is seen. */
    Optional<String> title(PlaceId place) {
        return Optional.ofNullable(titles.get(place));
    }

    void listen(Listener listener) {
        listeners.add(listener);
    }

    private void tell(java.util.function.Consumer<Listener> message) {
        EventThread.require();
        listeners.forEach(message);
    }
}
