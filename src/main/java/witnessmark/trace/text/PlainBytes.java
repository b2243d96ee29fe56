package witnessmark.trace.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import witnessmark.trace.InPieces;
import witnessmark.trace.Watch;
import witnessmark.trace.result.TextCoding;

/** The bytes of a text so that digits and delimiters are single bytes: without a mark at the start, wide ones as UTF-8. */
final class PlainBytes {
    private PlainBytes() {}

    static InputStream of(InputStream in, TextCoding coding) throws IOException {
        PushbackInputStream back = new PushbackInputStream(in, 3);
        byte[] start = new byte[3];
        int length = back.readNBytes(start, 0, 3);
        int mark = Encodings.mark(start, length);
        boolean fits = mark == 3 ? coding == TextCoding.UTF_8 : mark == 0 || coding.wide();
        int from = fits ? mark : 0;
        back.unread(start, from, length - from);
        return coding.wide() ? new Narrow(new InputStreamReader(back, coding.charset())) : back;
    }

    /** Someone ended the reading. */
    static final class Stopped extends IOException {
        Stopped() {
            super("stopped");
        }
    }

    /** Counts bytes and asks whether to go on. */
    static final class Counted extends InPieces {
        private final Watch watch;
        private long bytes;

        Counted(InputStream in, Watch watch) {
            super(in);
            this.watch = watch;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            int read = in.read(into, offset, length);
            bytes += Math.max(read, 0);
            if (!watch.goOn(bytes)) {
                throw new Stopped();
            }
            return read;
        }

        long bytes() {
            return bytes;
        }
    }

    /** Characters as UTF-8. */
    private static final class Narrow extends InputStream {
        private static final int ROOM = 1 << 15;

        private final Reader reader;
        private final CharBuffer chars = CharBuffer.allocate(ROOM);
        private byte[] ready = new byte[0];
        private int position;
        private char high;

        Narrow(Reader reader) {
            this.reader = reader;
        }

        @Override
        public int read() throws IOException {
            return more() ? ready[position++] & 0xFF : -1;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            if (length == 0) {
                return 0;
            }
            if (!more()) {
                return -1;
            }
            int count = Math.min(length, ready.length - position);
            System.arraycopy(ready, position, into, offset, count);
            position += count;
            return count;
        }

        private boolean more() throws IOException {
            while (position == ready.length) {
                chars.clear();
                if (high != 0) {
                    chars.put(high);
                    high = 0;
                }
                if (reader.read(chars) < 0) {
                    return false;
                }
                chars.flip();
                int last = chars.limit() - 1;
                if (last > 0 && Character.isHighSurrogate(chars.get(last))) {
                    high = chars.get(last);
                    chars.limit(last);
                }
                ready = chars.toString().getBytes(StandardCharsets.UTF_8);
                position = 0;
            }
            return true;
        }
    }
}
