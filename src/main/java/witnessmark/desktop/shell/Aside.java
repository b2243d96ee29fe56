package witnessmark.desktop.shell;

import java.util.List;
import javax.swing.JComponent;

/** A page that for a while stands in the place of this one: beginning a logbook, looking at what was read. */
public interface Aside {
    /** Beside the page's title. */
    String heading();

    JComponent component();

    JComponent firstFocus();

    /** The stems of its help, the most particular first. */
    List<String> help();

    /** The logbook changed while it is in view. */
    default void changed() {}

    /** Something else stands where it stood. */
    default void gone() {}
}
