package witnessmark.trace.kept;

import java.io.IOException;
import java.util.Arrays;
import java.util.zip.CRC32C;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Packed bytes with a checksum. */
final class Frame {
    /** First bytes of a file of kept samples, with its version. */
    static final byte[] MAGIC = {'W', 'M', 'K', 'E', 'P', 'T', '0', '2'};
    /** Those of a file whose stretches are deflated, as they were at first. */
    static final byte[] FIRST_MAGIC = {'W', 'M', 'K', 'E', 'P', 'T', '0', '1'};
    /** Bytes at the end: where the index is, how long, its checksum, and the first bytes again. */
    static final int TRAILER = 8 + 4 + 4 + 8;

    private static final int LARGEST = 1 << 30;
    private static final int START = 1 << 14;

    private Frame() {}

    static int checksum(byte[] bytes, int length) {
        CRC32C crc = new CRC32C();
        crc.update(bytes, 0, length);
        return (int) crc.getValue();
    }

    /** Unpacks one after another; what is read from one is good until the next. */
    static final class Unpacker implements AutoCloseable {
        private final Bytes bytes;
        private final Inflater inflater = new Inflater();
        private byte[] packed = new byte[0];
        private byte[] plain = new byte[START];

        Unpacker(Bytes bytes) {
            this.bytes = bytes;
        }

        /** What is not packed. */
        Numbers.Reading plain(long at, int length, int checksum, int most) throws IOException {
            if (length > most) {
                throw new KeptDamaged("too large at " + at);
            }
            fetch(at, length, checksum);
            return new Numbers.Reading(packed, length);
        }

        Numbers.Reading read(long at, int length, int checksum, int mostUnpacked) throws IOException {
            fetch(at, length, checksum);
            try {
                int filled = unpacked(at, length, mostUnpacked);
                return new Numbers.Reading(plain, filled);
            } catch (DataFormatException e) {
                throw new KeptDamaged("packed bytes at " + at);
            }
        }

        private void fetch(long at, int length, int checksum) throws IOException {
            if (at < 0 || length < 0 || at > bytes.size() - length || length > LARGEST) {
                throw new KeptDamaged("beyond the end");
            }
            if (packed.length < length) {
                packed = new byte[length + Long.BYTES];
            }
            bytes.read(at, packed, 0, length);
            if (checksum(packed, length) != checksum) {
                throw new KeptDamaged("checksum at " + at);
            }
        }

        /** Answers how many bytes there are. */
        private int unpacked(long at, int length, int most) throws KeptDamaged, DataFormatException {
            inflater.reset();
            inflater.setInput(packed, 0, length);
            int filled = 0;
            while (!inflater.finished()) {
                if (filled >= most) {
                    throw new KeptDamaged("too large at " + at);
                }
                if (filled == plain.length) {
                    plain = Arrays.copyOf(plain, (int) Math.min(most, plain.length * 4L));
                }
                int got = inflater.inflate(plain, filled, Math.min(most, plain.length) - filled);
                if (got == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
                    throw new KeptDamaged("cut off at " + at);
                }
                filled += got;
            }
            return filled;
        }

        @Override
        public void close() {
            inflater.end();
        }
    }
}
