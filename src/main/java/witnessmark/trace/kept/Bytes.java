package witnessmark.trace.kept;

import java.io.EOFException;
import java.io.IOException;

/** Bytes that can be read at any place, wherever they are. */
public interface Bytes {
    long size();

    /** @throws IOException if not so many can be read there */
    void read(long at, byte[] into, int offset, int length) throws IOException;

    /** Those of an array. */
    static Bytes of(byte[] bytes) {
        return new Bytes() {
            @Override
            public long size() {
                return bytes.length;
            }

            @Override
            public void read(long at, byte[] into, int offset, int length) throws IOException {
                if (at < 0 || length < 0 || at > bytes.length - length) {
                    throw new EOFException();
                }
                System.arraycopy(bytes, (int) at, into, offset, length);
            }
        };
    }
}
