package witnessmark.trace;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A stream whose every byte goes through {@link #read(byte[], int, int)}, however it is asked for. */
public abstract class InPieces extends FilterInputStream {
    private static final int SKIPPED = 1 << 13;

    protected InPieces(InputStream in) {
        super(in);
    }

    @Override
    public abstract int read(byte[] into, int offset, int length) throws IOException;

    @Override
    public final int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public final long skip(long bytes) throws IOException {
        byte[] over = new byte[(int) Math.min(SKIPPED, Math.max(1, bytes))];
        long skipped = 0;
        while (skipped < bytes) {
            int count = read(over, 0, (int) Math.min(over.length, bytes - skipped));
            if (count < 0) {
                break;
            }
            skipped += count;
        }
        return skipped;
    }

    @Override
    public final boolean markSupported() {
        return false;
    }
}
