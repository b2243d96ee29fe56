package witnessmark.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The first 100 bytes of a file, looked at before SQLite is let near it. Only while this process has no connection to
 * the file: closing a file drops every lock the process has on it (sqlite.org/howtocorrupt.html, 2.2).
 *
 * @param sqlite whether it begins as an SQLite file does
 * @param applicationId whose file it is, 0 when unmarked
 * @param bytes how long the file says it is
 */
record Header(boolean sqlite, int applicationId, long bytes) {
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int LENGTH = 100;
    private static final int PAGE_SIZE = 16;
    private static final int PAGE_COUNT = 28;
    private static final int APPLICATION_ID = 68;

    static Header of(Path file) throws IOException {
        byte[] start;
        try (InputStream in = Files.newInputStream(file)) {
            start = in.readNBytes(LENGTH);
        }
        if (start.length < LENGTH || !Arrays.equals(start, 0, MAGIC.length, MAGIC, 0, MAGIC.length)) {
            boolean cutShort =
                    start.length >= MAGIC.length && Arrays.equals(start, 0, MAGIC.length, MAGIC, 0, MAGIC.length);
            return new Header(cutShort, 0, cutShort ? LENGTH : 0);
        }
        ByteBuffer buffer = ByteBuffer.wrap(start);
        int pageSize = Short.toUnsignedInt(buffer.getShort(PAGE_SIZE));
        long pages = Integer.toUnsignedLong(buffer.getInt(PAGE_COUNT));
        return new Header(true, buffer.getInt(APPLICATION_ID), pages * (pageSize == 1 ? 65_536 : pageSize));
    }

    /**
     * What is wrong with a file of this header, in words, or null.
     *
     * @param size of the file, bytes
     */
    @Nullable
    String notALogbook(long size) {
        if (!sqlite) {
            return "a file of another kind";
        }
        if (size >= LENGTH && applicationId != LogbookSchema.APPLICATION_ID) {
            return applicationId == 0 ? "a database that is no logbook" : "a database of another program";
        }
        return null;
    }

    /** Whether the end of the file is missing. Says nothing while a log with newer pages lies beside the file. */
    boolean cutShort(long size) {
        return size < bytes;
    }
}
