package witnessmark.store;

import java.nio.file.Path;
import witnessmark.domain.Facts;
import witnessmark.logbook.port.Change;

/** What one open logbook could not take: kept in the emergency journal, and settled there once the logbook has it. */
final class NotTaken {
    private final EmergencyJournal journal;
    private final Path logbook;
    private final String logbookId;
    private boolean any;

    NotTaken(EmergencyJournal journal, Path logbook, String logbookId) {
        this.journal = journal;
        this.logbook = logbook;
        this.logbookId = logbookId;
    }

    void keep(Change change) {
        any = true;
        journal.keep(logbook, logbookId, change);
    }

    /** Something was saved: perhaps what was kept before. */
    void nowIn(Facts facts) {
        if (any) {
            journal.settle(logbook, logbookId, facts);
        }
    }
}
