package witnessmark.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The disk itself. */
final class RealDisk implements Disk {
    @Override
    public Path folderBeside(Path folder) throws IOException {
        Path parent = folder.toAbsolutePath().getParent();
        if (parent == null) {
            throw new IOException("a disk itself is no season folder");
        }
        Files.createDirectories(parent);
        return Files.createTempDirectory(parent, "." + folder.getFileName() + "-");
    }

    @Override
    public void folder(Path folder) throws IOException {
        Files.createDirectory(folder);
    }

    @Override
    public OutputStream create(Path file) throws IOException {
        return Files.newOutputStream(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
    }

    @Override
    public void sync(Path path) throws IOException {
        boolean folder = Files.isDirectory(path);
        if (folder && path.getFileSystem().getSeparator().equals("\\")) {
            return; // Windows has no way to sync a folder, and needs none: its file system logs names itself
        }
        try (FileChannel channel =
                FileChannel.open(path, folder ? StandardOpenOption.READ : StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void delete(Path path) throws IOException {
        Files.deleteIfExists(path);
    }
}
