package witnessmark.abuse;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What a watched program did to its disk, in the order it did it. */
record DiskLog(List<Act> acts) {
    private static final int HEAD = 32;

    /** In the order of {@code src/test/c/disk.c}. */
    enum Kind {
        NONE,
        CREATE,
        WRITE,
        TRUNCATE,
        SYNC,
        RENAME,
        UNLINK,
        SYNC_FOLDER,
        /** Not an act of the disk: what the program said to people by then. */
        SAID
    }

    /**
     * One act.
     *
     * @param name the path, where the act is about a name
     * @param data what was written, or the new name
     * @param file which file, where the act is about content
     * @param offset where in the file, or its new length
     */
    record Act(Kind kind, String name, byte[] data, long file, long offset) {
        String text() {
            return new String(data, StandardCharsets.UTF_8);
        }

        boolean isData() {
            return kind == Kind.WRITE || kind == Kind.TRUNCATE;
        }
    }

    static DiskLog read(Path file) throws IOException {
        ByteBuffer in = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.nativeOrder());
        List<Act> acts = new ArrayList<>();
        while (in.remaining() >= HEAD) {
            Kind kind = Kind.values()[in.getInt()];
            byte[] name = new byte[in.getInt()];
            byte[] data = new byte[in.getInt()];
            in.getInt();
            long inode = in.getLong();
            long offset = in.getLong();
            in.get(name).get(data);
            acts.add(new Act(kind, new String(name, StandardCharsets.UTF_8), data, inode, offset));
        }
        return new DiskLog(acts);
    }
}
