package witnessmark.trace.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import witnessmark.trace.result.TextCoding;

/** Which way the characters of a file are written, from its first bytes. */
final class Encodings {
    private static final int LOOKED_AT = 1 << 13;
    /** Of a hundred bytes of a text so many may be control characters. */
    private static final int CONTROLS = 1;

    private Encodings() {}

    static TextCoding of(byte[] head, int length) {
        if (starts(head, length, 0xEF, 0xBB, 0xBF)) {
            return TextCoding.UTF_8;
        }
        if (starts(head, length, 0xFF, 0xFE)) {
            return TextCoding.UTF_16_LE;
        }
        if (starts(head, length, 0xFE, 0xFF)) {
            return TextCoding.UTF_16_BE;
        }
        int looked = Math.min(length, LOOKED_AT) & ~1;
        int even = 0;
        int odd = 0;
        for (int i = 0; i < looked; i += 2) {
            even += head[i] == 0 ? 1 : 0;
            odd += head[i + 1] == 0 ? 1 : 0;
        }
        if (odd > looked / 4 && even < looked / 20) {
            return TextCoding.UTF_16_LE;
        }
        if (even > looked / 4 && odd < looked / 20) {
            return TextCoding.UTF_16_BE;
        }
        return isUtf8(head, length) ? TextCoding.UTF_8 : TextCoding.LATIN_1;
    }

    /** How many bytes the mark of the coding takes at the start. */
    static int mark(byte[] head, int length) {
        if (starts(head, length, 0xEF, 0xBB, 0xBF)) {
            return 3;
        }
        return starts(head, length, 0xFF, 0xFE) || starts(head, length, 0xFE, 0xFF) ? 2 : 0;
    }

    /** Whether decoded characters are those of no text. */
    static boolean binary(String text) {
        int controls = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            controls +=
                    (c < ' ' && c != '\n' && c != '\r' && c != '\t' && c != '\f') || c == 0x7F || c == '\uFFFD' ? 1 : 0;
        }
        return controls * 100L > (long) text.length() * CONTROLS;
    }

    private static boolean isUtf8(byte[] head, int length) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate(length + 1);
        CoderResult result = decoder.decode(ByteBuffer.wrap(head, 0, length), out, false);
        return !result.isError();
    }

    private static boolean starts(byte[] head, int length, int... mark) {
        if (length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((head[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
