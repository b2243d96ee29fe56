package witnessmark.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;

/** Puts a file in its place whole or not at all: written beside, brought to the disk, renamed. */
final class WholeFile {
    private final Disk disk;

    WholeFile(Disk disk) {
        this.disk = disk;
    }

    /**
     * Writes a file, or puts it in the place of one that was there.
     *
     * @throws IOException if it could not be written: what was there is as it was, and nothing lies beside it
     */
    void write(byte[] content, Path file) throws IOException {
        Path whole = file.toAbsolutePath();
        Path beside = whole.resolveSibling(whole.getFileName() + ".new");
        try {
            disk.delete(beside); // left by a machine that went off while one was written
            try (OutputStream to = disk.create(beside)) {
                to.write(content);
            }
            disk.sync(beside);
            disk.rename(beside, whole);
        } catch (IOException e) {
            takeAway(beside, e);
            throw e;
        }
    }

    /** What cannot be taken away now is by the next writing. */
    private void takeAway(Path beside, IOException first) {
        try {
            disk.delete(beside);
        } catch (IOException e) {
            first.addSuppressed(e);
        }
    }
}
