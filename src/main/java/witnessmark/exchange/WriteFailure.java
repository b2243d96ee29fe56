package witnessmark.exchange;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Tells a full disk from other reasons why something could not be written. */
final class WriteFailure {
    private static final List<String> FULL =
            List.of("no space left", "not enough space", "disk quota exceeded", "disk full", "disk is full");
    private static final long NEXT_TO_NOTHING = 1 << 16;

    private WriteFailure() {}

    /** The problem behind an error met while writing to a place. */
    static Problem problem(Path place, Exception error) {
        Throwable cause = error.getCause() instanceof IOException inner ? inner : error;
        if (cause instanceof CharacterCodingException) {
            return Problem.of(ProblemKind.CANNOT_WRITE, place.toString(), "half a character in a text");
        }
        if (cause instanceof NoSuchFileException) {
            return Problem.of(ProblemKind.CANNOT_WRITE, place.toString(), "nothing can be made at that place");
        }
        String said = cause.getMessage() == null ? cause.toString() : cause.getMessage();
        String plain = said.toLowerCase(Locale.ROOT);
        boolean full = FULL.stream().anyMatch(plain::contains) || nothingLeft(place);
        return full
                ? Problem.of(ProblemKind.DISK_FULL, place.toString())
                : Problem.of(ProblemKind.CANNOT_WRITE, place.toString(), SystemWords.of(error));
    }

    /** The system may word its reason in another language; then the free space tells. */
    private static boolean nothingLeft(Path place) {
        Path parent = place.toAbsolutePath().getParent();
        try {
            FileStore store = store(Files.exists(place) ? place : parent);
            return store != null && !store.isReadOnly() && isDisk(store) && store.getUsableSpace() < NEXT_TO_NOTHING;
        } catch (IOException e) {
            return false; // a disk that does not answer is not known to be full
        }
    }

    /** A place that the system only pretends, such as /proc, has no room at all and is not full. */
    private static boolean isDisk(FileStore store) throws IOException {
        return store.getTotalSpace() > 0;
    }

    private static @Nullable FileStore store(@Nullable Path place) throws IOException {
        return place == null || !Files.exists(place) ? null : Files.getFileStore(place);
    }
}
