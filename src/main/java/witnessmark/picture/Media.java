package witnessmark.picture;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;

/** What a file is, by its first bytes. */
public enum Media {
    JPEG("image/jpeg", true),
    PNG("image/png", true),
    GIF("image/gif", true),
    BMP("image/bmp", true),
    /** Kept; nothing in the program draws it. */
    WEBP("image/webp", false),
    /** HEIF with the pictures of a telephone in it. Kept; nothing in the program draws it. */
    HEIC("image/heic", false),
    AVIF("image/avif", false),
    TIFF("image/tiff", false),
    /** A drawing in words, which can name other files and programs: not taken. */
    SVG("image/svg+xml", false),
    /** No picture. */
    OTHER("application/octet-stream", false);

    /** How many of the first bytes are asked for. */
    public static final int HEAD = 512;

    private static final Set<String> HEIC_BRANDS =
            Set.of("heic", "heix", "hevc", "heim", "heis", "hevm", "mif1", "msf1");
    private static final Set<String> AVIF_BRANDS = Set.of("avif", "avis");

    private final String mime;
    private final boolean drawn;

    Media(String mime, boolean drawn) {
        this.mime = mime;
        this.drawn = drawn;
    }

    /** As in the register of media types: {@code image/jpeg}. */
    public String mime() {
        return mime;
    }

    /** Whether the program can draw it. */
    public boolean isDrawn() {
        return drawn;
    }

    /** Whether it is a picture that may be kept. */
    public boolean isKept() {
        return this != SVG && this != OTHER;
    }

    /**
     * By the signatures of the formats (ITU-T T.81 B.1.1.3, PNG 5.2, GIF89a 17, the Windows bitmap header, RFC 9649,
     * ISO/IEC 14496-12 4.3, TIFF 6.0).
     *
     * @param head the first {@link #HEAD} bytes, or all there are
     */
    public static Media of(byte[] head) {
        if (starts(head, 0, 0xFF, 0xD8, 0xFF)) {
            return JPEG;
        }
        if (starts(head, 0, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
            return PNG;
        }
        if (says(head, 0, "GIF87a") || says(head, 0, "GIF89a")) {
            return GIF;
        }
        if (says(head, 0, "RIFF") && says(head, 8, "WEBP")) {
            return WEBP;
        }
        if (says(head, 4, "ftyp") && head.length >= 12) {
            return ofBrand(new String(head, 8, 4, StandardCharsets.ISO_8859_1));
        }
        if (starts(head, 0, 'I', 'I', 42, 0) || starts(head, 0, 'M', 'M', 0, 42)) {
            return TIFF;
        }
        if (isBitmap(head)) {
            return BMP;
        }
        return isSvg(head) ? SVG : OTHER;
    }

    private static Media ofBrand(String brand) {
        if (AVIF_BRANDS.contains(brand)) {
            return AVIF;
        }
        return HEIC_BRANDS.contains(brand) ? HEIC : OTHER;
    }

    /** Two letters alone are too little: the size of the header that follows is asked too. */
    private static boolean isBitmap(byte[] head) {
        if (!says(head, 0, "BM") || head.length < 26) {
            return false;
        }
        int header = head[14] & 0xFF;
        return head[15] == 0
                && head[16] == 0
                && head[17] == 0
                && Set.of(12, 40, 52, 56, 64, 108, 124).contains(header);
    }

    private static boolean isSvg(byte[] head) {
        String text = new String(head, StandardCharsets.UTF_8).strip().toLowerCase(Locale.ROOT);
        return text.contains("<svg") || text.startsWith("<?xml") && text.contains("svg");
    }

    private static boolean says(byte[] head, int at, String text) {
        return head.length >= at + text.length()
                && new String(head, at, text.length(), StandardCharsets.ISO_8859_1).equals(text);
    }

    private static boolean starts(byte[] head, int at, int... bytes) {
        if (head.length < at + bytes.length) {
            return false;
        }
        for (int i = 0; i < bytes.length; i++) {
            if ((head[at + i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }
}
