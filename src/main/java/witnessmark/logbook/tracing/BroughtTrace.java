package witnessmark.logbook.tracing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.port.Kept;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TraceSettings;

/**
 * A logger's file as it was read, before anything of it is written.
 *
 * @param name of the file
 * @param size of the file, bytes
 * @param content SHA-256 of its bytes
 * @param samples SHA-256 of what it says, however it is written
 * @param found what it comes to
 * @param settings what that was worked out with
 * @param kept its samples, ready to be kept; null when they were not asked for or are too many
 */
public record BroughtTrace(
        String name,
        long size,
        String content,
        String samples,
        ReduceTrace.Found found,
        TraceSettings settings,
        @Nullable Kept kept) {
    /** Its parts: one for each time its time begins; none while a question is open. */
    public List<Reduction> parts() {
        return found.parts();
    }
}
