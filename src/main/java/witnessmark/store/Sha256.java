package witnessmark.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), by which bytes are known and found again. */
final class Sha256 {
    private Sha256() {}

    /** One that has read nothing yet. */
    static MessageDigest begun() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Of what a digest has read: 64 hexadecimal digits, small letters. */
    static String text(MessageDigest read) {
        return HexFormat.of().formatHex(read.digest());
    }

    /** Of a file, read to its end. */
    static String of(Path file) throws IOException {
        MessageDigest digest = begun();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return text(digest);
    }
}
