package witnessmark.trace.packed;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The list at the end of a zip (PKWARE APPNOTE 4.3.12 and 4.3.16), read without unpacking anything: what is in it can be asked about
 * before its first file is read. Nothing rests on it: where it is not found, or says less than it should, reading finds out.
 */
final class ZipList {
    /** The list is looked for in so many bytes at the end. */
    private static final int TAIL = 1 << 20;

    private static final int END = 0x06054b50;
    private static final int END_LENGTH = 22;
    private static final int ENTRY = 0x02014b50;
    private static final int ENTRY_LENGTH = 46;

    private ZipList() {}

    /**
     * The names of its files.
     *
     * @param in from the first byte of the file; skipped through where it says how much is left
     * @return empty where it cannot be told like this
     */
    static List<String> names(InputStream in) throws IOException {
        for (int left = in.available(); left > TAIL; left = in.available()) {
            if (in.skip(left - TAIL) <= 0) {
                return List.of();
            }
        }
        byte[] tail = in.readNBytes(TAIL + 1);
        return tail.length > TAIL ? List.of() : names(ByteBuffer.wrap(tail).order(ByteOrder.LITTLE_ENDIAN));
    }

    private static List<String> names(ByteBuffer tail) {
        for (int at = tail.limit() - END_LENGTH; at >= 0; at--) {
            boolean end = tail.getInt(at) == END
                    && at + END_LENGTH + Short.toUnsignedInt(tail.getShort(at + 20)) == tail.limit();
            if (end) {
                long length = Integer.toUnsignedLong(tail.getInt(at + 12));
                return length > at ? List.of() : entries(tail, (int) (at - length), at);
            }
        }
        return List.of();
    }

    private static List<String> entries(ByteBuffer tail, int from, int until) {
        List<String> names = new ArrayList<>();
        int at = from;
        while (at + ENTRY_LENGTH <= until && tail.getInt(at) == ENTRY) {
            int length = Short.toUnsignedInt(tail.getShort(at + 28));
            if (at + ENTRY_LENGTH + length > until) {
                return List.of();
            }
            try {
                String name = StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(tail.slice(at + ENTRY_LENGTH, length))
                        .toString();
                if (isFile(name)) {
                    names.add(name);
                }
            } catch (CharacterCodingException e) {
                return List.of(); // names in another coding: reading says so
            }
            at += ENTRY_LENGTH
                    + length
                    + Short.toUnsignedInt(tail.getShort(at + 30))
                    + Short.toUnsignedInt(tail.getShort(at + 32));
        }
        return at == until ? names : List.of();
    }

    /** Folders and what some systems put beside files are none. */
    static boolean isFile(String entry) {
        String name = entry.toLowerCase(Locale.ROOT);
        return !name.endsWith("/") && !name.startsWith("__macosx/") && !name.endsWith(".ds_store");
    }
}
