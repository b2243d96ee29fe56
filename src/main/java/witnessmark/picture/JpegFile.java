package witnessmark.picture;

import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The segments of a JPEG file (ITU-T T.81, annex B). */
final class JpegFile {
    private static final int SOI = 0xD8;
    private static final int EOI = 0xD9;
    private static final int SOS = 0xDA;
    private static final int RST = 0xD0;
    private static final int TEM = 0x01;
    private static final int APP = 0xE0;
    private static final int EXIF = 0xE1;
    private static final int COLOURS = 0xE2;
    private static final int ADOBE = 0xEE;
    private static final int COMMENT = 0xFE;
    private static final int PROGRESSIVE = 0xC2;
    private static final byte[] EXIF_HEAD = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] COLOURS_HEAD = "ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII);
    private static final String XMP_PLACE = "GPSL";

    /** Told of everything a file is made of, in order. */
    private interface Parts {
        /** @param body what follows the length */
        void segment(int marker, byte[] body) throws IOException;

        /** A byte of the coded picture, or a marker within it. */
        void coded(int value) throws IOException;
    }

    private JpegFile() {}

    /** Reads what it says, to its end. */
    static Picture look(Reading in) throws IOException {
        Looking looking = new Looking();
        boolean whole = walk(in, looking);
        Exif exif = looking.exif;
        return new Picture(
                Media.JPEG,
                looking.width,
                looking.height,
                exif.turn(),
                exif.taken(),
                exif.offset(),
                1,
                whole,
                exif.located() || looking.placed,
                looking.progressive);
    }

    private static final class Looking implements Parts {
        private int width;
        private int height;
        private boolean progressive;
        private boolean placed;
        private Exif exif = Exif.NOTHING;

        @Override
        public void segment(int marker, byte[] body) {
            if (isFrame(marker) && body.length >= 5 && width == 0) {
                height = (body[1] & 0xFF) << 8 | body[2] & 0xFF;
                width = (body[3] & 0xFF) << 8 | body[4] & 0xFF;
                progressive = marker == PROGRESSIVE;
            } else if (marker == EXIF && starts(body, EXIF_HEAD)) {
                exif = Exif.of(Arrays.copyOfRange(body, EXIF_HEAD.length, body.length));
            } else if (marker >= APP && marker != COLOURS) {
                placed |= new String(body, StandardCharsets.ISO_8859_1).contains(XMP_PLACE);
            }
        }

        @Override
        public void coded(int value) {}
    }

    /**
     * Writes the same picture with nothing beside it but its colours, how it is turned and when it was taken. The coded
     * picture is the same to the last bit; what lies behind its end is left out.
     *
     * @return whether the picture was whole
     */
    static boolean bare(Reading in, Exif exif, OutputStream out) throws IOException {
        marker(out, SOI);
        segment(out, EXIF, join(EXIF_HEAD, exif.bare()));
        boolean whole = walk(in, new Parts() {
            @Override
            public void segment(int marker, byte[] body) throws IOException {
                boolean beside = marker >= APP && marker <= APP + 15 || marker == COMMENT;
                if (!beside || marker == APP || marker == ADOBE || marker == COLOURS && starts(body, COLOURS_HEAD)) {
                    JpegFile.segment(out, marker, body);
                }
            }

            @Override
            public void coded(int value) throws IOException {
                out.write(value);
            }
        });
        marker(out, EOI);
        return whole;
    }

    /** The Exif of a file. */
    static Exif exif(Reading in) throws IOException {
        Looking looking = new Looking();
        walk(in, looking);
        return looking.exif;
    }

    /** @return whether its end was reached; false where it breaks off or goes on as no JPEG does */
    private static boolean walk(Reading in, Parts parts) throws IOException {
        try {
            if (in.two() != (0xFF00 | SOI)) {
                return false;
            }
            int marker = marker(in);
            while (marker != EOI) {
                if (marker < 0) {
                    return false;
                }
                if (marker == TEM || marker >= RST && marker <= SOI) {
                    marker = marker(in);
                    continue;
                }
                int length = in.two();
                if (length < 2) {
                    return false;
                }
                parts.segment(marker, in.bytes(length - 2));
                marker = marker == SOS ? coded(in, parts) : marker(in);
            }
            return true;
        } catch (EOFException e) {
            return false;
        }
    }

    /** @return -1 where there is none */
    private static int marker(Reading in) throws IOException {
        if (in.one() != 0xFF) {
            return -1;
        }
        int marker = in.one();
        while (marker == 0xFF) {
            marker = in.one();
        }
        return marker == 0 ? -1 : marker;
    }

    /** @return the marker that ends it */
    private static int coded(Reading in, Parts parts) throws IOException {
        while (true) {
            int value = in.one();
            if (value != 0xFF) {
                parts.coded(value);
                continue;
            }
            int next = in.one();
            while (next == 0xFF) {
                next = in.one();
            }
            if (next != 0 && (next < RST || next > RST + 7)) {
                return next;
            }
            parts.coded(0xFF);
            parts.coded(next);
        }
    }

    private static boolean isFrame(int marker) {
        return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    }

    private static void marker(OutputStream out, int marker) throws IOException {
        out.write(0xFF);
        out.write(marker);
    }

    private static void segment(OutputStream out, int marker, byte[] body) throws IOException {
        marker(out, marker);
        int length = body.length + 2;
        out.write(length >> 8);
        out.write(length);
        out.write(body);
    }

    private static byte[] join(byte[] first, byte[] second) {
        byte[] all = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }

    private static boolean starts(byte[] body, byte[] head) {
        return body.length >= head.length && Arrays.equals(body, 0, head.length, head, 0, head.length);
    }
}
