package witnessmark.abuse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AnnotatedElementContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDirFactory;

/**
 * A folder of a test that lies in memory where the system has such a place: thousands of small files are opened one
 * after another, and none of these tests is about the disk below.
 */
final class InMemory implements TempDirFactory {
    private static final Path MEMORY = Path.of("/dev/shm");

    @Override
    public Path createTempDirectory(AnnotatedElementContext element, ExtensionContext test) throws IOException {
        return Files.isWritable(MEMORY)
                ? Files.createTempDirectory(MEMORY, "witness-mark-")
                : Files.createTempDirectory("witness-mark-");
    }
}
