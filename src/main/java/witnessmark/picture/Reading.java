package witnessmark.picture;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;

/** A file read from its first byte, with how far it was read. What is skipped is read too, so that it is there. */
final class Reading {
    private final InputStream in;
    private long at;

    /** @param in buffered */
    Reading(InputStream in) {
        this.in = in;
    }

    long at() {
        return at;
    }

    /** @return -1 at the end */
    int next() throws IOException {
        int value = in.read();
        at += value < 0 ? 0 : 1;
        return value;
    }

    int one() throws IOException {
        int value = next();
        if (value < 0) {
            throw new EOFException();
        }
        return value;
    }

    /** The most significant byte first. */
    int two() throws IOException {
        return one() << 8 | one();
    }

    int twoLow() throws IOException {
        return one() | one() << 8;
    }

    /** The most significant byte first, without sign. */
    long four() throws IOException {
        return (long) two() << 16 | two();
    }

    long fourLow() throws IOException {
        return twoLow() | (long) twoLow() << 16;
    }

    byte[] bytes(int count) throws IOException {
        byte[] bytes = in.readNBytes(count);
        at += bytes.length;
        if (bytes.length < count) {
            throw new EOFException();
        }
        return bytes;
    }

    void skip(long count) throws IOException {
        long left = count;
        while (left > 0) {
            long gone = in.skip(left);
            if (gone <= 0) {
                one();
                gone = 1;
            } else {
                at += gone;
            }
            left -= gone;
        }
    }
}
