package witnessmark.exchange;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What a first look through a text file tells before anything is read out of it.
 *
 * @param utf8 whether it is UTF-8 throughout, with or without a byte order mark
 * @param badLine the line with the first bytes that are not UTF-8; 0 when the whole file is in another encoding
 * @param returns whether its first line ends with a carriage return and a line feed, as another system writes lines
 * @param newlineAtEnd whether its last line is ended
 * @param bytes its length, or more than allowed when the look ended there
 */
record TextLook(boolean utf8, long badLine, boolean returns, boolean newlineAtEnd, long bytes) {
    private static final int CHUNK = 1 << 16;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /**
     * Looks through a file.
     *
     * @param most bytes after which to stop looking
     */
    static TextLook at(Path file, long most) throws IOException {
        Lines lines = new Lines();
        CharsetDecoder decoder = strict();
        ByteBuffer bytes = ByteBuffer.allocate(CHUNK);
        CharBuffer chars = CharBuffer.allocate(CHUNK);
        long length = 0;
        try (InputStream in = Files.newInputStream(file)) {
            while (length <= most) {
                int got = in.read(bytes.array(), bytes.position(), bytes.remaining());
                if (length == 0 && otherMark(bytes.array(), got)) {
                    return new TextLook(false, 0, false, false, got);
                }
                length += Math.max(got, 0);
                bytes.limit(bytes.position() + Math.max(got, 0)).position(0);
                CoderResult result = decoder.decode(bytes, chars, got < 0);
                lines.count(chars.flip());
                chars.clear();
                if (result.isError() || lines.nulInHeading) {
                    return new TextLook(false, lines.nulInHeading ? 0 : lines.line, false, false, length);
                }
                bytes.compact();
                if (got < 0) {
                    break;
                }
            }
        }
        return new TextLook(true, 0, lines.returns, lines.ended, length);
    }

    /** Opens a file that was looked at, after its byte order mark if it has one. Malformed bytes are an error. */
    static Reader open(Path file) throws IOException {
        Reader reader = new BufferedReader(new InputStreamReader(Files.newInputStream(file), strict()), CHUNK);
        reader.mark(1);
        if (reader.read() != BYTE_ORDER_MARK) {
            reader.reset();
        }
        return reader;
    }

    private static CharsetDecoder strict() {
        return StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    /** Whether the first bytes are the byte order mark of UTF-16. */
    private static boolean otherMark(byte[] bytes, int got) {
        int first = bytes[0] & 0xFF;
        int second = bytes[1] & 0xFF;
        return got >= 2 && ((first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE));
    }

    /** Counts lines as an editor does. */
    private static final class Lines {
        private long line = 1;
        private boolean ended;
        private boolean returns;
        private boolean afterReturn;
        private boolean nulInHeading;

        void count(CharBuffer chars) {
            while (chars.hasRemaining()) {
                char next = chars.get();
                returns |= line == 2 && next == '\n' && afterReturn;
                ended = next == '\n' || next == '\r';
                if (ended && !(next == '\n' && afterReturn)) {
                    line++;
                }
                // UTF-16 without a mark has a zero byte in every other place
                nulInHeading |= next == 0 && line == 1;
                afterReturn = next == '\r';
            }
        }
    }
}
