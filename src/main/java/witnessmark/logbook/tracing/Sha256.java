package witnessmark.logbook.tracing;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The digest by which a file is known again, whatever it is called. */
final class Sha256 {
    private static final int PIECE = 1 << 16;

    private Sha256() {}

    /** 64 hexadecimal digits. */
    static String of(ReduceTrace.Source file) throws IOException {
        MessageDigest digest = begin();
        try (InputStream in = file.open()) {
            byte[] piece = new byte[PIECE];
            for (int length = in.read(piece); length >= 0; length = in.read(piece)) {
                digest.update(piece, 0, length);
            }
            return HexFormat.of().formatHex(digest.digest());
        }
    }

    /** One that bytes are given to. */
    static MessageDigest begin() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
