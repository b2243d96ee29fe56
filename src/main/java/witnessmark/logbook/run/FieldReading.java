package witnessmark.logbook.run;

import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;

/**
 * What one field came to.
 *
 * @param note what stands under it when nothing is wrong
 * @param problem what is wrong or unlike this engine, or null
 * @param meant text that would put a query right, or null
 */
public record FieldReading(
        Note note, @Nullable Problem problem, @Nullable String meant) {
    /** Nothing is wrong. */
    public static FieldReading fine(Note note) {
        return new FieldReading(note, null, null);
    }

    /** Something is wrong, and there is no text that puts it right. */
    public static FieldReading wrong(Problem problem) {
        return new FieldReading(Note.of(Note.Kind.NONE), problem, null);
    }

    public boolean stops() {
        return problem != null && problem.stops();
    }
}
