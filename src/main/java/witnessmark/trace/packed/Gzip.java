package witnessmark.trace.packed;

import java.io.IOException;
import java.util.zip.GZIPInputStream;

/** A gzip (RFC 1952) that can tell what is wrong with it. */
final class Gzip extends GZIPInputStream {
    /** Checksum and length after the text, bytes. */
    private static final int CHECK = 8;

    private final Counting raw;
    private long filled;

    /** @param raw counts what {@code written} gives */
    Gzip(Counting raw, Written written) throws IOException {
        super(raw);
        this.raw = raw;
        written.wholeOnce(inf::finished);
    }

    @Override
    protected void fill() throws IOException {
        super.fill();
        filled = raw.bytes();
    }

    /** Once something was wrong: whether all of the text came out, and only its check, at the end of the file, does not fit. */
    boolean isWrongInItsCheck() throws IOException {
        if (!inf.finished()) {
            return false;
        }
        long after = inf.getRemaining() + raw.bytes() - filled;
        while (after <= CHECK && raw.read() >= 0) {
            after++;
        }
        return after <= CHECK; // more would be text that nobody read
    }
}
