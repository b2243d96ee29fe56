package witnessmark.abuse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AnnotatedElementContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDirFactory;

/**
 * The folder of every test: it lies in memory where the system has such a place with room in it. Thousands of small files
 * are written and synced one after another, and no test is about the disk below; what is, makes its own.
 */
final class InMemory implements TempDirFactory {
    private static final Path MEMORY = Path.of("/dev/shm");
    private static final long ROOM = 512L << 20;

    @Override
    public Path createTempDirectory(AnnotatedElementContext element, ExtensionContext test) throws IOException {
        return Files.isWritable(MEMORY) && Files.getFileStore(MEMORY).getUsableSpace() > ROOM
                ? Files.createTempDirectory(MEMORY, "witness-mark-")
                : Files.createTempDirectory("witness-mark-");
    }
}
