package witnessmark.store;

import java.nio.file.Path;

/** The name under which a data folder keeps what was seen of the logbook at a place. */
public final class SeenPlace {
    private SeenPlace() {}

    /** @param logbook as the system itself spells it */
    public static String of(Path logbook) {
        return new Canonical().hash(logbook.toString()).substring(0, Home.PLACE);
    }
}
