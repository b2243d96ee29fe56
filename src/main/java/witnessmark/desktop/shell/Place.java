package witnessmark.desktop.shell;

import java.util.List;
import javax.swing.JComponent;

/**
 * One place of the rail. Every method is called on the event thread. The shell shows title, heading note and find field
 * above the component and leaves the page's margin around it.
 */
public interface Place {
    PlaceId id();

    /** The page. Asked for at the first visit, and kept: scroll position, selection and what is typed stay. */
    JComponent component();

    /** Where the focus goes on arrival. */
    JComponent firstFocus();

    /** Called on arrival, and when the logbook changed while the place is in view. Reading is done elsewhere. */
    void refresh();

    /** Called when the logbook changed while another place is in view: what waits here may be another number now. */
    default void recount() {}

    /** Shows the place itself, no record in particular. Called after {@link #refresh}. */
    default void open() {}

    /** Somebody asks for the place itself while it is in view: what was put over it goes. */
    default void again() {}

    /**
     * Somebody asks for the place itself, from elsewhere or from there. Who comes by Back or from a sheet does not.
     *
     * @return whether it is shown anew, with the focus where it begins, and not as he left it
     */
    default boolean anew() {
        return false;
    }

    /** Shows one record of the place, by the text form of its id. Called after {@link #refresh}. */
    default void open(String record) {}

    /**
     * The stems of the help of what is in view here, the most particular first: {@code help.runSheet}. What all of them
     * say stands in the help, one under the other.
     */
    default List<String> help() {
        return List.of(id().helpKey());
    }

    /** What can be done here, for the menus. Each is offered from everywhere. */
    default List<Command> commands() {
        return List.of();
    }
}
