package witnessmark.desktop.start;

import java.nio.file.Path;
import witnessmark.logbook.port.Logbook;

/**
 * Puts another logbook in the window. Each closes the one in hand, drafts kept, and builds the places anew; when the
 * other cannot be opened the one in hand stays and a sentence says why. Called on the event thread; what takes time is
 * done elsewhere.
 */
public interface OpenLogbook {
    /** Opens the file. */
    void open(Path path);

    /**
     * Brings a copy back in the place of a logbook, closing that first when it is the one in hand, and opens it. What stood
     * there is kept beside it, and a sentence says where.
     */
    void restore(Path copy, Path present);

    /** Takes over a logbook that was just made and is open. */
    void take(Logbook opened);

    /** Opens the sample season, as it was left. */
    void openSample();

    /** Backs up what people wrote in the sample's working copy, throws it away and opens it as it was at first. */
    void resetSample();
}
