package witnessmark.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Files that are either wholly written or not there, and that only their owner can read. */
final class SafeFiles {
    private static final Logger LOG = LoggerFactory.getLogger(SafeFiles.class);

    private SafeFiles() {}

    /** Makes an empty file for its owner alone. */
    static void createPrivate(Path file) throws IOException {
        Files.createFile(file, permissions("rw-------"));
    }

    /** Makes a folder, and those above it, for its owner alone. */
    static void createPrivateFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder, permissions("rwx------"));
        }
    }

    /** Puts a text in a file: written aside, brought to the disk, renamed. */
    static void write(Path file, String text) throws IOException {
        createPrivateFolder(folderOf(file));
        Path aside = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(aside);
        createPrivate(aside);
        try (FileChannel channel = FileChannel.open(aside, StandardOpenOption.WRITE)) {
            writeAll(channel, text);
        }
        moveOver(aside, file);
    }

    /** Adds a text to the end of a file and brings it to the disk, wholly or not at all. */
    static void append(Path file, String text) throws IOException {
        createPrivateFolder(folderOf(file));
        if (!Files.exists(file)) {
            createPrivate(file);
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            long end = channel.size();
            try {
                writeAll(channel.position(end), text);
            } catch (IOException e) {
                channel.truncate(end);
                throw e;
            }
        }
    }

    /** Copies a file that nobody writes to a new one, and brings that to the disk. */
    static void copy(Path from, Path to) throws IOException {
        createPrivate(to);
        try (FileChannel in = FileChannel.open(from, StandardOpenOption.READ);
                FileChannel out = FileChannel.open(to, StandardOpenOption.WRITE)) {
            long size = in.size();
            long at = 0;
            while (at < size) {
                at += in.transferTo(at, size - at, out);
            }
            out.force(true);
        }
    }

    /** Brings a file to the disk that somebody else wrote and nobody has open. */
    static void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Removes a file that is in nobody's way if it stays. */
    static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            LOG.warn("a file stays behind: {}", file, e);
        }
    }

    /** Renames a file, in place of any that has the name. */
    static void moveOver(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            LOG.debug("not in one step here: {}", to, e);
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
        syncFolder(folderOf(to));
    }

    /** Brings the names in a folder to the disk, where the system lets one. */
    static void syncFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            LOG.debug("a folder cannot be synced here: {}", folder, e);
        }
    }

    /** The folder a file lies in. */
    static Path folderOf(Path file) {
        Path whole = file.toAbsolutePath();
        Path folder = whole.getParent();
        return folder == null ? whole : folder;
    }

    private static void writeAll(FileChannel channel, String text) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
        channel.force(true);
    }

    private static FileAttribute<?>[] permissions(String owner) {
        if (!FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
            return new FileAttribute<?>[0]; // there a user's folders are private already
        }
        return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(owner))};
    }
}
