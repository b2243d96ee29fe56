package witnessmark.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;

/** The disk without waiting for it: for tests about what is written, not whether it outlives a power cut. */
class UnsyncedDisk implements Disk {
    private final Disk disk = new RealDisk();

    @Override
    public Path folderBeside(Path folder) throws IOException {
        return disk.folderBeside(folder);
    }

    @Override
    public void folder(Path folder) throws IOException {
        disk.folder(folder);
    }

    @Override
    public OutputStream create(Path file) throws IOException {
        return disk.create(file);
    }

    @Override
    public void sync(Path path) {}

    @Override
    public void rename(Path from, Path to) throws IOException {
        disk.rename(from, to);
    }

    @Override
    public void delete(Path path) throws IOException {
        disk.delete(path);
    }
}
