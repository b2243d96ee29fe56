package witnessmark.logbook.port;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Bytes that are kept in the logbook beside an entry that names them: the samples of a trace. They are known by what
 * they are, so the same bytes are kept once.
 */
public final class Kept {
    /** More than this is not kept, bytes. */
    public static final int MOST = 64 << 20;

    private final String sha256;
    private final byte[] bytes;

    private Kept(String sha256, byte[] bytes) {
        this.sha256 = sha256;
        this.bytes = bytes;
    }

    /**
     * @param bytes from 1 to {@link #MOST} of them
     * @throws IllegalArgumentException if there are none or too many
     */
    public static Kept of(byte[] bytes) {
        if (bytes.length == 0 || bytes.length > MOST) {
            throw new IllegalArgumentException(bytes.length + " bytes are not kept");
        }
        byte[] own = bytes.clone();
        return new Kept(sha256(own), own);
    }

    /** SHA-256 of them, 64 hexadecimal digits. */
    public String sha256() {
        return sha256;
    }

    public int size() {
        return bytes.length;
    }

    /** Some of them. */
    public byte[] piece(int from, int length) {
        byte[] piece = new byte[length];
        System.arraycopy(bytes, from, piece, 0, length);
        return piece;
    }

    /** All of them. */
    public byte[] bytes() {
        return bytes.clone();
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
