package witnessmark.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;

/** The few things done to a disk when a folder is written, so that a test can let each of them fail. */
interface Disk {
    /** Makes a new empty folder beside another, with a name that nobody else has. */
    Path folderBeside(Path folder) throws IOException;

    /** Makes a folder; it must not be there yet. */
    void folder(Path folder) throws IOException;

    /** Makes a file; it must not be there yet. */
    OutputStream create(Path file) throws IOException;

    /** Waits until a file or folder is on the disk. */
    void sync(Path path) throws IOException;

    /** Gives a file or folder another name, wholly or not at all. */
    void rename(Path from, Path to) throws IOException;

    /** Takes away a file or an empty folder; it may be gone already. */
    void delete(Path path) throws IOException;
}
