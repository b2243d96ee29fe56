package witnessmark.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** By what a table can be told from one that was changed since it was written: SHA-256 (FIPS 180-4). */
final class Digests {
    private static final int AT_ONCE = 1 << 16;

    private Digests() {}

    /** The digest of a file, in hexadecimal. */
    static String of(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return of(in);
        }
    }

    /** The digest of what is left to read, in hexadecimal. */
    static String of(InputStream in) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] some = new byte[AT_ONCE];
            for (int read = in.read(some); read >= 0; read = in.read(some)) {
                digest.update(some, 0, read);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
