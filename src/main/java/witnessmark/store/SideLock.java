package witnessmark.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The file {@code NAME.lock} beside a logbook, locked by the system for as long as the process that writes the logbook
 * lives; a file left by one that died is simply taken over. Its text says who, where and since when. The locked byte
 * lies far behind the text, so that others can read it (locks on Windows keep readers out).
 */
final class SideLock implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(SideLock.class);
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;
    private static final int LONGEST_TEXT = 4_096;
    private static final int TRIES = 10;
    private static final long TEXT_FOLLOWS_NANOS = 10_000_000;

    /** Who holds a lock. */
    record Held(String host, String person, long sinceMillis) {
        String text() {
            return host + "\n" + person + "\n" + sinceMillis + "\n";
        }

        static Held of(String text) {
            List<String> lines = text.lines().toList();
            if (lines.size() < 3 || !lines.get(2).matches("\\d{1,18}")) {
                return new Held("?", "?", 0);
            }
            return new Held(lines.get(0), lines.get(1), Long.parseLong(lines.get(2)));
        }
    }

    /** A lock, or who has it. One of the two is null. */
    record Try(@Nullable SideLock lock, @Nullable Held by) {}

    private final Path file;
    private final FileChannel channel;
    private final FileLock lock;

    private SideLock(Path file, FileChannel channel, FileLock lock) {
        this.file = file;
        this.channel = channel;
        this.lock = lock;
    }

    static Path beside(Path logbook) {
        return logbook.resolveSibling(logbook.getFileName() + ".lock");
    }

    /**
     * Tries to take the lock of a logbook.
     *
     * @param neverClosed takes channels onto a lock that this very process holds through somebody else: closing one
     *     would drop that lock (the Java documentation of FileLock says so)
     * @throws IOException if there can be no such file there
     */
    static Try take(Path logbook, Held as, List<FileChannel> neverClosed) throws IOException {
        Path file = beside(logbook);
        for (int i = 0; i < TRIES; i++) {
            make(file);
            FileKey before = FileKey.of(file); // before it is opened: else a lock on a file removed since would do
            FileChannel channel = channel(file);
            if (channel == null) {
                continue;
            }
            try {
                FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
                if (lock == null) {
                    Held by = holder(channel);
                    channel.close();
                    return new Try(null, by);
                }
                if (before.stillAt(file)) {
                    write(channel, as.text());
                    return new Try(new SideLock(file, channel, lock), null);
                }
                channel.close(); // somebody let go of this file and removed it just now
            } catch (OverlappingFileLockException e) {
                LOG.debug("held by this process: {}", file, e);
                neverClosed.add(channel);
                return new Try(null, holder(channel));
            } catch (IOException e) {
                channel.close();
                throw e;
            }
        }
        throw new IOException("the lock file is made and removed again and again: " + file);
    }

    @Override
    public void close() {
        if (!channel.isOpen()) {
            return; // the file may be another's by now
        }
        try {
            boolean gone = removed(); // first, while nobody else can have it
            lock.release();
            channel.close();
            if (!gone) {
                Files.deleteIfExists(file); // where an open file cannot be removed
            }
        } catch (IOException e) {
            LOG.warn("the lock file stays behind, which does no harm: {}", file, e);
        }
    }

    private boolean removed() {
        try {
            return Files.deleteIfExists(file);
        } catch (IOException e) {
            LOG.debug("an open file cannot be removed here: {}", file, e);
            return false;
        }
    }

    private static void make(Path file) throws IOException {
        try {
            if (!Files.exists(file)) {
                SafeFiles.createPrivate(file);
            }
        } catch (FileAlreadyExistsException e) {
            LOG.debug("made by somebody else just now: {}", file, e);
        }
    }

    /** A channel onto the lock file; null when somebody else has removed it just now. */
    private static @Nullable FileChannel channel(Path file) throws IOException {
        try {
            return FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
        } catch (NoSuchFileException e) {
            LOG.debug("removed just now: {}", file, e);
            return null;
        }
    }

    /** Who holds it. The text follows the lock by a moment. */
    private static Held holder(FileChannel channel) throws IOException {
        Held held = Held.of(read(channel));
        for (int i = 0; i < TRIES && held.sinceMillis() == 0; i++) {
            LockSupport.parkNanos(TEXT_FOLLOWS_NANOS);
            held = Held.of(read(channel));
        }
        return held;
    }

    private static String read(FileChannel channel) throws IOException {
        ByteBuffer text = ByteBuffer.allocate(LONGEST_TEXT);
        int length = Math.max(0, channel.read(text, 0));
        return new String(text.array(), 0, length, StandardCharsets.UTF_8);
    }

    /** On a full disk the lock holds without its text. */
    private static void write(FileChannel channel, String text) {
        try {
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)), 0);
        } catch (IOException e) {
            LOG.warn("who has the lock cannot be written down", e);
        }
    }
}
