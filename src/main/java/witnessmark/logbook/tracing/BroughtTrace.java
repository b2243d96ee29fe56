package witnessmark.logbook.tracing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.port.Kept;
import witnessmark.trace.result.Outline;
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
 * @param outline how far its columns went, and its engine speed; empty as long as a question is open
 * @param kept its samples, ready to be kept; null when they were not asked for or are too many
 */
public record BroughtTrace(
        String name,
        long size,
        String content,
        String samples,
        ReduceTrace.Found found,
        TraceSettings settings,
        Outline outline,
        @Nullable Kept kept) {
    /** Its parts: one for each time its time begins; none while a question is open. */
    public List<Reduction> parts() {
        return found.parts();
    }

    /** The same without its samples: they are not to be kept. */
    public BroughtTrace withoutSamples() {
        return new BroughtTrace(name, size, content, samples, found, settings, outline, null);
    }
}
