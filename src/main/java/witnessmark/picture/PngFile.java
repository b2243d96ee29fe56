package witnessmark.picture;

import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.zip.CRC32;

/** The chunks of a PNG file (W3C, Portable Network Graphics, third edition, 5 and 11). */
final class PngFile {
    private static final int SIGNATURE = 8;
    private static final int CHECK = 4;
    private static final String EXIF = "eXIf";
    private static final int MOST_TEXT = 1 << 16;
    /** What is needed to draw it as it is meant to look. */
    private static final Set<String> DRAWN =
            Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "pHYs", "bKGD");

    private static final byte[] BEGIN = {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A};

    private PngFile() {}

    /** Reads what it says, to its end. */
    static Picture look(Reading in) throws IOException {
        long width = 0;
        long height = 0;
        int frames = 1;
        boolean whole = false;
        boolean laced = false;
        Exif exif = Exif.NOTHING;
        try {
            in.skip(SIGNATURE);
            while (!whole) {
                long length = in.four();
                String kind = kind(in);
                long read = 0;
                if (kind.equals("IHDR") && length == 13) {
                    width = in.four();
                    height = in.four();
                    in.skip(4);
                    laced = in.one() != 0;
                    read = 13;
                } else if (kind.equals("acTL") && length == 8) {
                    frames = (int) Math.max(1, Math.min(Integer.MAX_VALUE, in.four()));
                    read = 4;
                } else if (kind.equals(EXIF) && length <= MOST_TEXT) {
                    exif = Exif.of(in.bytes((int) length));
                    read = length;
                }
                in.skip(length - read);
                in.skip(CHECK);
                whole = kind.equals("IEND");
            }
        } catch (EOFException e) {
            whole = false;
        }
        return new Picture(
                Media.PNG,
                (int) Math.min(Integer.MAX_VALUE, width),
                (int) Math.min(Integer.MAX_VALUE, height),
                exif.turn(),
                exif.taken(),
                exif.offset(),
                frames,
                whole,
                exif.located(),
                laced);
    }

    /**
     * Writes the same picture with nothing beside it but its colours, how it is turned and when it was taken. What is written
     * of the picture is the same to the last bit.
     *
     * @return whether it was whole
     */
    static boolean bare(Reading in, OutputStream out) throws IOException {
        try {
            in.skip(SIGNATURE);
            out.write(BEGIN);
            while (true) {
                long length = in.four();
                String kind = kind(in);
                if (kind.equals(EXIF) && length <= MOST_TEXT) {
                    chunk(out, kind, Exif.of(in.bytes((int) length)).bare());
                    in.skip(CHECK);
                } else if (DRAWN.contains(kind)) {
                    begin(out, length, kind);
                    for (long left = length + CHECK; left > 0; left -= Math.min(left, MOST_TEXT)) {
                        out.write(in.bytes((int) Math.min(left, MOST_TEXT)));
                    }
                } else {
                    in.skip(length + CHECK);
                }
                if (kind.equals("IEND")) {
                    return true;
                }
            }
        } catch (EOFException e) {
            return false;
        }
    }

    private static void begin(OutputStream out, long length, String kind) throws IOException {
        out.write(four(length));
        out.write(kind.getBytes(StandardCharsets.ISO_8859_1));
    }

    /** One of ours, with its check: CRC-32 of what kind it is and what is in it (5.5). */
    private static void chunk(OutputStream out, String kind, byte[] body) throws IOException {
        CRC32 check = new CRC32();
        check.update(kind.getBytes(StandardCharsets.ISO_8859_1));
        check.update(body);
        begin(out, body.length, kind);
        out.write(body);
        out.write(four(check.getValue()));
    }

    private static byte[] four(long number) {
        return new byte[] {(byte) (number >> 24), (byte) (number >> 16), (byte) (number >> 8), (byte) number};
    }

    private static String kind(Reading in) throws IOException {
        return new String(in.bytes(4), StandardCharsets.ISO_8859_1);
    }
}
