package witnessmark.exchange;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;

/** A disk on which one call fails, or every call from one on. */
final class FailingDisk implements Disk {
    private final Disk disk = new UnsyncedDisk();
    private final int failsAt;
    private final boolean forEver;
    private final String reason;
    private int calls;

    FailingDisk(int failsAt, boolean forEver, String reason) {
        this.failsAt = failsAt;
        this.forEver = forEver;
        this.reason = reason;
    }

    /** How many calls there were. */
    int calls() {
        return calls;
    }

    @Override
    public Path folderBeside(Path folder) throws IOException {
        call();
        return disk.folderBeside(folder);
    }

    @Override
    public void folder(Path folder) throws IOException {
        call();
        disk.folder(folder);
    }

    @Override
    public OutputStream create(Path file) throws IOException {
        call();
        return new FilterOutputStream(disk.create(file)) {
            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                call();
                out.write(bytes, from, length);
            }
        };
    }

    @Override
    public void sync(Path path) throws IOException {
        call();
        disk.sync(path);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        call();
        disk.rename(from, to);
    }

    @Override
    public void delete(Path path) throws IOException {
        call();
        disk.delete(path);
    }

    private void call() throws IOException {
        calls++;
        if (calls == failsAt || (forEver && calls > failsAt)) {
            throw new IOException(reason);
        }
    }
}
