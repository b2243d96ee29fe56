package witnessmark.trace.kept;

import java.io.IOException;
import java.util.zip.CRC32C;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Packed bytes with a checksum, read back. */
final class Frame {
    /** First bytes of a file of kept samples, with its version. */
    static final byte[] MAGIC = {'W', 'M', 'K', 'E', 'P', 'T', '0', '1'};
    /** Bytes at the end: where the index is, how long, its checksum, and the first bytes again. */
    static final int TRAILER = 8 + 4 + 4 + 8;

    private static final int LARGEST = 1 << 30;

    private Frame() {}

    static int checksum(byte[] bytes, int length) {
        CRC32C crc = new CRC32C();
        crc.update(bytes, 0, length);
        return (int) crc.getValue();
    }

    static Numbers.Reading read(Bytes bytes, long at, int length, int checksum, int mostUnpacked) throws IOException {
        if (at < 0 || length < 0 || at + length > bytes.size() || length > LARGEST) {
            throw new KeptDamaged("beyond the end");
        }
        byte[] packed = new byte[length];
        bytes.read(at, packed, 0, length);
        if (checksum(packed, length) != checksum) {
            throw new KeptDamaged("checksum at " + at);
        }
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(packed);
            byte[] plain = new byte[Math.min(mostUnpacked, Math.max(4 * length, 1 << 12))];
            int filled = 0;
            while (!inflater.finished()) {
                if (filled == plain.length) {
                    if (filled >= mostUnpacked) {
                        throw new KeptDamaged("too large at " + at);
                    }
                    plain = java.util.Arrays.copyOf(plain, (int) Math.min(mostUnpacked, plain.length * 4L));
                }
                int got = inflater.inflate(plain, filled, plain.length - filled);
                if (got == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
                    throw new KeptDamaged("cut off at " + at);
                }
                filled += got;
            }
            return new Numbers.Reading(plain, filled);
        } catch (DataFormatException e) {
            throw new KeptDamaged("packed bytes at " + at);
        } finally {
            inflater.end();
        }
    }
}
