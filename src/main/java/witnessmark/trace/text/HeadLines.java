package witnessmark.trace.text;

import java.util.ArrayList;
import java.util.List;
import witnessmark.trace.result.TextCoding;

/** The beginning of a file as lines, cut into cells as {@link RowScanner} cuts them. */
final class HeadLines {
    static final int MOST_LINES = 600;

    private final List<String> lines;
    private final TextCoding coding;
    private final String text;

    private HeadLines(String text, List<String> lines, TextCoding coding) {
        this.text = text;
        this.lines = lines;
        this.coding = coding;
    }

    /** @param whole whether the bytes are all of the file; if not, its last line is cut off and left out */
    static HeadLines of(byte[] head, int length, boolean whole) {
        TextCoding coding = Encodings.of(head, length);
        int from = Encodings.mark(head, length);
        int most = coding.wide() ? length - (length - from) % 2 : length;
        String text = new String(head, from, most - from, coding.charset());
        List<String> lines = new ArrayList<>();
        int start = 0;
        int at = 0;
        while (at < text.length() && lines.size() < MOST_LINES) {
            char c = text.charAt(at);
            if (c == '\n' || c == '\r') {
                lines.add(text.substring(start, at));
                at += c == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n' ? 1 : 0;
                start = at + 1;
            }
            at++;
        }
        if (whole && start < text.length() && lines.size() < MOST_LINES) {
            lines.add(text.substring(start));
        }
        return new HeadLines(text, lines, coding);
    }

    TextCoding coding() {
        return coding;
    }

    /** All that was decoded, at most as much as the bytes in hand. */
    String text() {
        return text;
    }

    List<String> lines() {
        return lines;
    }

    /** A line as cells, without quotes and the spaces around them. */
    static List<String> cells(String line, char delimiter) {
        List<String> cells = new ArrayList<>();
        int p = 0;
        while (true) {
            while (p < line.length() && (line.charAt(p) == ' ' || (delimiter == ' ' && line.charAt(p) == '\t'))) {
                p++;
            }
            if (delimiter == ' ' && p >= line.length() && !cells.isEmpty()) {
                return cells;
            }
            int first = p;
            int last;
            if (p < line.length() && line.charAt(p) == '"') {
                first = ++p;
                while (p < line.length() && line.charAt(p) != '"') {
                    p++;
                }
                last = p;
                while (p < line.length() && !parts(line.charAt(p), delimiter)) {
                    p++;
                }
            } else {
                while (p < line.length() && !parts(line.charAt(p), delimiter)) {
                    p++;
                }
                last = p;
            }
            cells.add(line.substring(first, last).strip());
            if (p >= line.length()) {
                return cells;
            }
            p++;
        }
    }

    private static boolean parts(char c, char delimiter) {
        return (c == delimiter && delimiter != 0) || (delimiter == ' ' && c == '\t');
    }
}
