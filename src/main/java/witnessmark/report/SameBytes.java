package witnessmark.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes what is drawn by lot out of a PDF, in place: the six letters before the name of each typeface, and the file's own
 * identifier, which becomes a digest of all else. So the same pages are the same file, and another file is another.
 */
final class SameBytes {
    /** ISO 32000-1, 9.6.4: a tag of six capitals and a plus before the name of a typeface of which only a part is there. */
    private static final Pattern TAG = Pattern.compile("/([A-Z]{6})\\+(?=Roboto|B612)");

    /** ISO 32000-1, 14.4: two strings of bytes. */
    private static final Pattern IDENTIFIER = Pattern.compile("/ID ?\\[<([0-9a-fA-F]{32})><([0-9a-fA-F]{32})>\\]");

    private SameBytes() {}

    static byte[] of(byte[] drawn) {
        StringBuilder pdf = new StringBuilder(new String(drawn, StandardCharsets.ISO_8859_1));
        Map<String, String> tags = new HashMap<>();
        Matcher tag = TAG.matcher(pdf.toString());
        while (tag.find()) {
            String same = tags.computeIfAbsent(tag.group(1), lot -> numbered(tags.size()));
            pdf.replace(tag.start(1), tag.end(1), same);
        }
        Matcher identifier = IDENTIFIER.matcher(pdf.toString());
        if (!identifier.find()) {
            throw new IllegalStateException("the file has no identifier where one is always written");
        }
        pdf.replace(identifier.start(1), identifier.end(1), "0".repeat(32));
        pdf.replace(identifier.start(2), identifier.end(2), "0".repeat(32));
        String digest = digest(pdf.toString().getBytes(StandardCharsets.ISO_8859_1));
        pdf.replace(identifier.start(1), identifier.end(1), digest);
        pdf.replace(identifier.start(2), identifier.end(2), digest);
        return pdf.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    /** AAAAAA, AAAAAB, … */
    private static String numbered(int number) {
        char[] letters = "AAAAAA".toCharArray();
        int left = number;
        for (int at = letters.length - 1; left > 0; at--) {
            letters[at] = (char) ('A' + left % 26);
            left /= 26;
        }
        return new String(letters);
    }

    private static String digest(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(digest, 0, 16).toLowerCase(Locale.ROOT);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
