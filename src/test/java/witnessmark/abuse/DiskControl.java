package witnessmark.abuse;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Says which calls of a watched program fail; the memory shared with {@code struct control} of disk.c. */
final class DiskControl {
    static final int LENGTH = 32;

    /** Kinds of calls, as bits; in the order of disk.c. */
    enum Call {
        READ,
        WRITE,
        TRUNCATE,
        SYNC,
        OPEN,
        RENAME,
        UNLINK;

        int bit() {
            return 1 << ordinal();
        }
    }

    /** How a disk fails; the numbers are Linux's (errno.h). */
    enum Failure {
        /** Input/output error. */
        EIO(5, 127),
        /** No space left on device. */
        ENOSPC(28, 127 - Call.READ.bit() - Call.UNLINK.bit()),
        /** Disk quota exceeded. */
        EDQUOT(122, 127 - Call.READ.bit() - Call.UNLINK.bit());

        private final int number;
        private final int calls;

        Failure(int number, int calls) {
            this.number = number;
            this.calls = calls;
        }

        /** The calls that may end so. */
        int calls() {
            return calls;
        }
    }

    private final MappedByteBuffer memory;

    /** @param file of {@link #LENGTH} bytes, the one the program was started with */
    DiskControl(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            memory = channel.map(FileChannel.MapMode.READ_WRITE, 0, LENGTH);
            memory.order(ByteOrder.nativeOrder());
        }
    }

    /** From now on the call of that number among those of these kinds fails, and every later one if for ever. */
    void fail(int calls, int at, Failure how, boolean forever) {
        stop();
        memory.putInt(4, at);
        memory.putInt(8, how.number);
        memory.putInt(12, forever ? 1 : 0);
        memory.putInt(16, 0);
        memory.putInt(20, 0);
        memory.putInt(0, calls);
    }

    /** From now on each call of these kinds takes so long. */
    void slow(int calls, int millis) {
        memory.putInt(28, millis);
        memory.putInt(24, calls);
    }

    /** No more calls fail. */
    void stop() {
        memory.putInt(0, 0);
    }

    /** How many calls of these kinds there were. */
    int counted() {
        return memory.getInt(16);
    }

    int failed() {
        return memory.getInt(20);
    }
}
