package witnessmark.trace.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.Arrays;

/**
 * Cuts bytes into rows of cells and reads the numbers in them, without making texts. Cells never span lines, and a row is
 * read again from its start when the bytes in hand end within it. Plain decimals of up to 15 digits are exact by a single
 * division (W. D. Clinger, "How to read floating point numbers accurately", 1990); all others go to {@link Decimals}.
 */
final class RowScanner {
    /** What stands in a cell: nothing. */
    static final byte EMPTY = 0;
    /** A number. */
    static final byte NUMBER = 1;
    /** A word for no number, such as NaN. */
    static final byte NO_NUMBER = 2;
    /** Anything else. */
    static final byte TEXT = 3;

    private static final int BUFFER = 1 << 16;
    private static final int LONGEST_ROW = 1 << 22;
    private static final double[] TENS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18
    };
    private static final long EXACT = 1L << 53;
    private static final int MOST_DIGITS = 18;
    /** What no byte is. */
    private static final int NEVER = 256;

    private final InputStream in;
    private final byte delimiter;
    private final boolean spaces;
    private final byte decimal;
    /** Whether a decimal mark can stand outside quotes. */
    private final boolean pointed;

    private final Decimals decimals;

    private byte[] bytes = new byte[BUFFER + 1];
    private int position;
    private int limit;
    private boolean ended;
    private boolean afterReturn;

    private final double[] values;
    private final byte[] kinds;
    private final int[] from;
    private final int[] to;
    private int rowStart;
    private int rowEnd;
    private int cells;
    private boolean cut;
    private boolean endless;

    /**
     * @param delimiter a space for any run of spaces and tabs, 0 for none
     * @param most columns; cells beyond are counted and not read
     */
    RowScanner(InputStream in, char delimiter, char decimal, char thousands, int most) {
        this.in = in;
        this.delimiter = (byte) delimiter;
        this.spaces = delimiter == ' ';
        this.decimal = (byte) decimal;
        this.pointed = decimal != delimiter;
        this.decimals = new Decimals(decimal, thousands);
        this.values = new double[most + 1];
        this.kinds = new byte[most + 1];
        this.from = new int[most + 1];
        this.to = new int[most + 1];
    }

    /**
     * Reads the next line that is not blank.
     *
     * @return false at the end
     */
    boolean next() throws IOException {
        do {
            if (!line()) {
                return false;
            }
        } while (cells == 1 && kinds[0] == EMPTY && !endless);
        return true;
    }

    /** Passes over lines, blank ones too, whatever stands in them. */
    void skip(int lines) throws IOException {
        int left = lines;
        while (left > 0 && line()) {
            left--;
        }
    }

    private boolean line() throws IOException {
        while (true) {
            if (position >= limit && !fill()) {
                return false;
            }
            if (afterReturn) {
                afterReturn = false;
                if (bytes[position] == '\n') {
                    position++;
                    continue;
                }
            }
            rowStart = position;
            int end = row();
            if (end < limit || ended) {
                finish(end);
                return true;
            }
            fill();
            if (ended) {
                rowStart = position;
                finish(row());
                return true;
            }
        }
    }

    private void finish(int end) {
        rowEnd = end;
        cut = end >= limit;
        afterReturn = !cut && bytes[end] == '\r';
        position = cut ? limit : end + 1;
    }

    /** Moves what is left to the front and reads on; a line longer than any row is thrown away but for its start. */
    private boolean fill() throws IOException {
        if (ended) {
            return false;
        }
        int left = limit - position;
        if (left == bytes.length - 1) {
            if (bytes.length < LONGEST_ROW) {
                bytes = Arrays.copyOf(bytes, Math.min(LONGEST_ROW, bytes.length * 4) + 1);
            } else {
                endless = true;
                left = bytes.length / 2;
            }
        }
        if (position > 0) {
            System.arraycopy(bytes, position, bytes, 0, left);
            position = 0;
        }
        limit = left;
        int read = in.read(bytes, limit, bytes.length - 1 - limit);
        if (read < 0) {
            ended = true;
        } else {
            limit += read;
        }
        bytes[limit] = '\n';
        return limit > left || (!ended && read == 0);
    }

    /** Reads cells from the start of the row; answers where its line ends, which is the limit when it goes on. */
    private int row() {
        byte[] b = bytes;
        double[] numbers = values;
        boolean wide = spaces;
        int apart = delimiter == 0 ? NEVER : delimiter;
        int mark = pointed ? decimal : NEVER;
        int most = numbers.length - 1;
        int p = rowStart;
        int count = 0;
        while (true) {
            int ch = b[p];
            while (ch <= ' ' && (ch == ' ' || (wide && ch == '\t'))) {
                ch = b[++p];
            }
            if (wide && count > 0 && (ch == '\n' || ch == '\r')) {
                cells = count;
                return p;
            }
            int cell = Math.min(count++, most);
            int start = p;
            from[cell] = start;
            if (ch == '-') {
                ch = b[++p];
            }
            int digits = p;
            long whole = 0;
            int digit;
            while ((digit = ch - '0') >= 0 && digit <= 9) {
                whole = whole * 10 + digit;
                ch = b[++p];
            }
            digits = p - digits;
            int places = 0;
            if (ch == mark) {
                int first = p + 1;
                ch = b[++p];
                while ((digit = ch - '0') >= 0 && digit <= 9) {
                    whole = whole * 10 + digit;
                    ch = b[++p];
                }
                places = p - first;
                digits += places;
            }
            boolean ends = ch == apart || ch == '\n' || ch == '\r' || (wide && ch == '\t');
            if (ends && digits > 0 && digits <= MOST_DIGITS && whole < EXACT) {
                double value = whole / TENS[places];
                numbers[cell] = b[start] == '-' ? -value : value;
                kinds[cell] = NUMBER;
                to[cell] = p;
            } else {
                p = other(start, cell);
                ch = b[p];
            }
            if (ch == '\n' || ch == '\r') {
                cells = count;
                return p;
            }
            p++;
        }
    }

    private boolean isDelimiter(int ch) {
        return (ch == delimiter && delimiter != 0) || (spaces && ch == '\t');
    }

    /** Any cell that is no plain decimal; answers where it ends: at a delimiter or the end of the line. */
    private int other(int start, int cell) {
        byte[] b = bytes;
        int p = start;
        int first = start;
        int last;
        if (b[p] == '"') {
            first = ++p;
            while (b[p] != '"' && b[p] != '\n' && b[p] != '\r') {
                p++;
            }
            last = p;
            while (b[p] != '\n' && b[p] != '\r' && !isDelimiter(b[p])) {
                p++;
            }
        } else {
            while (b[p] != '\n' && b[p] != '\r' && !isDelimiter(b[p])) {
                p++;
            }
            last = p;
        }
        while (last > first && (b[last - 1] == ' ' || b[last - 1] == '\t')) {
            last--;
        }
        while (first < last && (b[first] == ' ' || b[first] == '\t')) {
            first++;
        }
        from[cell] = first;
        to[cell] = last;
        values[cell] = Double.NaN;
        if (first == last) {
            kinds[cell] = EMPTY;
        } else if (decimals.read(b, first, last)) {
            values[cell] = decimals.value();
            kinds[cell] = NUMBER;
        } else {
            kinds[cell] = decimals.saysNone(b, first, last) ? NO_NUMBER : TEXT;
        }
        return p;
    }

    /** How many cells the row has; more than there are columns are possible. */
    int cells() {
        return cells;
    }

    byte kind(int cell) {
        return cell < cells ? kinds[cell] : EMPTY;
    }

    /** The number in a cell; NaN where there is none. */
    double value(int cell) {
        return cell < cells ? values[cell] : Double.NaN;
    }

    /** What stands in a cell, without quotes and spaces around it. */
    String text(int cell, Charset charset) {
        return cell < cells ? new String(bytes, from[cell], to[cell] - from[cell], charset) : "";
    }

    /** The numbers of the row as they stand in it, good until the next; only where the kind says so, and as far as its cells. */
    double[] values() {
        return values;
    }

    /** What stands in the cells of the row, as far as it has cells. */
    byte[] kinds() {
        return kinds;
    }

    /** Whether the row begins with these bytes. */
    boolean startsWith(byte[] mark) {
        return mark.length > 0
                && rowEnd - rowStart >= mark.length
                && Arrays.equals(bytes, rowStart, rowStart + mark.length, mark, 0, mark.length);
    }

    /** Whether the file ends with this row and no line end. */
    boolean cut() {
        return cut;
    }

    /** Whether the line was too long to be a row. */
    boolean endless() {
        boolean was = endless;
        endless = false;
        return was;
    }
}
