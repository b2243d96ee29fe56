package witnessmark.trace.packed;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.ZipInputStream;

/** A zip, read file by file, that can tell what is wrong with one. */
final class Zip extends ZipInputStream {
    /** What a file in it begins with (PKWARE APPNOTE 4.3.7), as a number whose first byte is the highest. */
    private static final int FILE = 0x504b0304;

    private static final int PIECE = 1 << 13;

    Zip(InputStream in) {
        super(in);
    }

    /** Once something was wrong with a file: whether all of its text came out, and only its check does not fit. */
    boolean isWrongInItsCheck() {
        return inf.finished();
    }

    /** After that: whether no other file follows. Nothing is read from it any more. */
    boolean wasLast() throws IOException {
        byte[] piece = new byte[PIECE];
        int seen = 0;
        for (int count = in.read(piece); count >= 0; count = in.read(piece)) {
            for (int i = 0; i < count; i++) {
                seen = seen << 8 | piece[i] & 0xFF;
                if (seen == FILE) {
                    return false;
                }
            }
        }
        return true;
    }
}
