package witnessmark.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The few things of Exif that are asked (CIPA DC-008, Exif 2.32: 0x0112 Orientation, 0x8769, 0x9003 DateTimeOriginal,
 * 0x9011 OffsetTimeOriginal, 0x8825 GPS), and the writing of them. Whatever does not hold together is taken as not said.
 *
 * @param turn 1 to 8
 */
record Exif(
        int turn, @Nullable LocalDateTime taken, @Nullable ZoneOffset offset, boolean located) {
    static final Exif NOTHING = new Exif(1, null, null, false);

    private static final int ORIENTATION = 0x0112;
    private static final int WITHIN = 0x8769;
    private static final int PLACE = 0x8825;
    private static final int TAKEN = 0x9003;
    private static final int OFFSET = 0x9011;
    private static final int ENTRY = 12;
    private static final int MOST_ENTRIES = 512;
    private static final int ASCII = 2;
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int MOMENT = 19;
    private static final int ZONE = 6;
    private static final DateTimeFormatter CLOCK =
            DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    /** One entry of a directory: what kind, how many, where its four bytes lie. */
    private record Field(int type, long count, int at) {}

    /** @param tiff a TIFF stream from its first byte */
    static Exif of(byte[] tiff) {
        if (tiff.length < 8) {
            return NOTHING;
        }
        ByteBuffer bytes = ByteBuffer.wrap(tiff);
        bytes.order(tiff[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        if (bytes.getShort(2) != 42) {
            return NOTHING;
        }
        Map<Integer, Field> first = fields(bytes, bytes.getInt(4));
        int turn = number(bytes, first.get(ORIENTATION), 1);
        Map<Integer, Field> within = fields(bytes, number(bytes, first.get(WITHIN), -1));
        Map<Integer, Field> place = fields(bytes, number(bytes, first.get(PLACE), -1));
        return new Exif(
                turn >= 1 && turn <= 8 ? turn : 1,
                moment(text(bytes, within.get(TAKEN), MOMENT)),
                zone(text(bytes, within.get(OFFSET), ZONE)),
                !place.isEmpty());
    }

    private static Map<Integer, Field> fields(ByteBuffer bytes, int at) {
        Map<Integer, Field> fields = new TreeMap<>();
        if (at < 8 || at > bytes.limit() - 2) {
            return fields;
        }
        int count = Math.min(bytes.getShort(at) & 0xFFFF, MOST_ENTRIES);
        for (int i = 0; i < count; i++) {
            int entry = at + 2 + i * ENTRY;
            if (entry > bytes.limit() - ENTRY) {
                break;
            }
            fields.putIfAbsent(
                    bytes.getShort(entry) & 0xFFFF,
                    new Field(bytes.getShort(entry + 2) & 0xFFFF, bytes.getInt(entry + 4) & 0xFFFFFFFFL, entry + 8));
        }
        return fields;
    }

    private static int number(ByteBuffer bytes, @Nullable Field field, int otherwise) {
        if (field == null || field.count() != 1) {
            return otherwise;
        }
        return switch (field.type()) {
            case SHORT -> bytes.getShort(field.at()) & 0xFFFF;
            case LONG -> bytes.getInt(field.at());
            default -> otherwise;
        };
    }

    private static String text(ByteBuffer bytes, @Nullable Field field, int letters) {
        if (field == null || field.type() != ASCII || field.count() < letters) {
            return "";
        }
        int from = bytes.getInt(field.at());
        if (from < 8 || from > bytes.limit() - letters) {
            return "";
        }
        return new String(bytes.array(), from, letters, StandardCharsets.US_ASCII);
    }

    private static @Nullable LocalDateTime moment(String text) {
        try {
            return text.isEmpty() ? null : LocalDateTime.parse(text, CLOCK);
        } catch (DateTimeException e) {
            return null;
        }
    }

    private static @Nullable ZoneOffset zone(String text) {
        try {
            return text.isEmpty() ? null : ZoneOffset.of(text);
        } catch (DateTimeException e) {
            return null;
        }
    }

    /** A TIFF stream that says no more than how the picture is to be turned and when it was taken. */
    byte[] bare() {
        boolean dated = taken != null;
        ByteBuffer out = ByteBuffer.allocate(dated ? 76 : 26);
        out.put(new byte[] {'M', 'M', 0, 42}).putInt(8);
        out.putShort((short) (dated ? 2 : 1));
        out.putShort((short) ORIENTATION)
                .putShort((short) SHORT)
                .putInt(1)
                .putShort((short) turn)
                .putShort((short) 0);
        if (taken != null) {
            out.putShort((short) WITHIN).putShort((short) LONG).putInt(1).putInt(38);
            out.putInt(0);
            out.putShort((short) 1);
            out.putShort((short) TAKEN)
                    .putShort((short) ASCII)
                    .putInt(MOMENT + 1)
                    .putInt(56);
            out.putInt(0);
            out.put(CLOCK.format(taken).getBytes(StandardCharsets.US_ASCII)).put((byte) 0);
        } else {
            out.putInt(0);
        }
        return out.array();
    }
}
