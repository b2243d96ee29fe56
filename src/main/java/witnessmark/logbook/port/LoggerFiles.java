package witnessmark.logbook.port;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Files of loggers on this machine's disks, cards and sticks. Nothing of them is ever written. */
public interface LoggerFiles {
    /**
     * A file as it lies in a folder.
     *
     * @param size bytes
     * @param changed when it was last written, milliseconds since 1970
     */
    record Lying(Path path, long size, long changed) {
        public String name() {
            return String.valueOf(path.getFileName());
        }
    }

    /** A file by its path, there or not. */
    LoggerFile file(Path path);

    /**
     * The plain files right in a folder, by name; hidden ones left out.
     *
     * @throws IOException if the folder is not there or cannot be read
     */
    List<Lying> in(Path folder) throws IOException;
}
