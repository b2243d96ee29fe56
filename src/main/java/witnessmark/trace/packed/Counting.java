package witnessmark.trace.packed;

import java.io.IOException;
import java.io.InputStream;
import witnessmark.trace.InPieces;

/** Counts what is read of the packed bytes. */
final class Counting extends InPieces {
    private long bytes;
    private boolean ended;

    Counting(InputStream in) {
        super(in);
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        int read = in.read(into, offset, length);
        bytes += Math.max(read, 0);
        ended = ended || read < 0;
        return read;
    }

    long bytes() {
        return bytes;
    }

    /** Whether more was asked for than there is. */
    boolean hasEnded() {
        return ended;
    }
}
