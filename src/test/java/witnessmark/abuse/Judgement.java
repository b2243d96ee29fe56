package witnessmark.abuse;

import static witnessmark.outcome.ProblemKind.CHANGES_MISSING;

import java.util.List;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.store.Sentences;

/** What became of a damaged file when the program opened it. */
enum Judgement {
    /** Not opened, with a sentence. */
    REFUSED,
    /** Opened, with a sentence that changes are missing. */
    TOLD_WHEN_OPENED,
    /** Opened, and the check that runs behind every opening says what is wrong. */
    FOUND_BY_CHECK,
    /** Opened, the check finds fault, and until then something was read otherwise than it was written. */
    FOUND_BY_CHECK_ALONE,
    /** Opened, and everything reads as it was written. */
    HARMLESS,
    /** Opened, no fault found, and something reads otherwise: what must never be. */
    SILENTLY_WRONG;

    /** Judges an opening, and closes what was opened. */
    static Judgement of(Outcome<Logbook> opened, Truth truth) {
        Sentences.complete(opened.problems());
        if (!opened.didWork()) {
            return REFUSED;
        }
        try (Logbook logbook = opened.orThrow()) {
            List<Problem> found = logbook.verify();
            Sentences.complete(found);
            boolean same = truth.isReadIn(logbook);
            if (found.isEmpty() && opened.problems().stream().anyMatch(told -> told.kind() == CHANGES_MISSING)) {
                return TOLD_WHEN_OPENED;
            }
            if (found.isEmpty()) {
                return same ? HARMLESS : SILENTLY_WRONG;
            }
            return same ? FOUND_BY_CHECK : FOUND_BY_CHECK_ALONE;
        }
    }
}
