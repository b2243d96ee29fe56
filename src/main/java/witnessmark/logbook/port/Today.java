package witnessmark.logbook.port;

import java.time.Instant;
import java.time.LocalDate;

/** The day taken for today. In the sample it is the day of the story. */
public interface Today {
    LocalDate day();

    /** The wall clock, for drafts and history; never taken for when a run went out. */
    Instant now();
}
