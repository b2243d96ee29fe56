package witnessmark.logbook.port;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * Bytes that are kept in the logbook beside an entry that names them: the samples of a trace. They are known by what
 * they are, so the same bytes are kept once. They are in memory, or where they lie until they are asked for.
 */
public final class Kept {
    /** More than this is not kept, bytes. */
    public static final int MOST = 64 << 20;

    private static final Pattern NAME = Pattern.compile("[0-9a-f]{64}");

    private final String sha256;
    private final int size;
    private final Source source;

    /** Where bytes lie, opened as often as it is asked. */
    @FunctionalInterface
    public interface Source {
        InputStream open() throws IOException;
    }

    private Kept(String sha256, int size, Source source) {
        this.sha256 = sha256;
        this.size = size;
        this.source = source;
    }

    /**
     * @param bytes from 1 to {@link #MOST} of them
     * @throws IllegalArgumentException if there are none or too many
     */
    public static Kept of(byte[] bytes) {
        byte[] own = bytes.clone();
        return at(sha256(own), own.length, () -> new ByteArrayInputStream(own));
    }

    /**
     * Bytes that lie elsewhere. Whoever writes them finds out whether they are still what they are said to be.
     *
     * @param sha256 what they are
     * @param size how many, from 1 to {@link #MOST}
     * @throws IllegalArgumentException if that is no name, or there are none or too many
     */
    public static Kept at(String sha256, int size, Source source) {
        if (!isName(sha256) || size <= 0 || size > MOST) {
            throw new IllegalArgumentException(size + " bytes are not kept as " + sha256);
        }
        return new Kept(sha256, size, source);
    }

    /** Whether a text can name what is kept: 64 hexadecimal digits, small letters. */
    public static boolean isName(String text) {
        return NAME.matcher(text).matches();
    }

    /** SHA-256 of them, 64 hexadecimal digits. */
    public String sha256() {
        return sha256;
    }

    public int size() {
        return size;
    }

    /** Reads them from the first one. */
    public InputStream open() throws IOException {
        return source.open();
    }

    /**
     * All of them.
     *
     * @throws UncheckedIOException if they lie elsewhere and cannot be read
     */
    public byte[] bytes() {
        try (InputStream in = open()) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
