package witnessmark.report;

import com.lowagie.text.Chunk;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Font;
import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.GrayColor;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;

/**
 * The letters of one document. The typefaces come with the program and go into the file, so that it looks the same
 * wherever it is printed. A letter that they do not have is not dropped: {@link #MISSING} stands for it.
 */
final class Lettering {
    /** What stands for a letter that cannot be printed. */
    static final char MISSING = '\uFFFD';

    private static final String ROBOTO = "/com/formdev/flatlaf/fonts/roboto/Roboto-";

    /** Where the plain typeface lies among what comes with the program. */
    static final String PLAIN_FILE = ROBOTO + "Regular.ttf";

    private static final char NARROW_SPACE = '\u202F';
    /** From one figure to the next; the typefaces have none. */
    private static final char ARROW = '\u2192';

    private static final String TO = "to";
    private static final char UNBROKEN_SPACE = '\u00A0';

    /** From one line to the next, as a share of the size. */
    static final float LINE = 1.25f;

    private final BaseFont plain = embedded(PLAIN_FILE);
    private final BaseFont bold = embedded(ROBOTO + "Bold.ttf");
    private final BaseFont heading = embedded("/fonts/B612-Bold.otf");
    private boolean missing;

    /** How words are set. */
    enum Style {
        /** On the dark board. */
        BOARD(12, 1),
        /** Over a section. */
        HEADING(11, 0),
        /** What is to be done. */
        STRONG(9.5f, 0),
        /** How a mark stands. */
        FIRM(8.5f, 0),
        /** All else in a row. */
        PLAIN(8.5f, 0),
        /** Over a column, and at the edges of a page. */
        SMALL(7.5f, 0.35f);

        private final float size;

        /** 0 is black, 1 is the paper. */
        private final float gray;

        Style(float size, float gray) {
            this.size = size;
            this.gray = gray;
        }

        /** In points. */
        float size() {
            return size;
        }
    }

    /** Words as they are set on the page. */
    Phrase set(String words, Style style) {
        return set(words, style, 1);
    }

    /**
     * The same, smaller.
     *
     * @param scale of the usual size
     */
    Phrase set(String words, Style style, float scale) {
        BaseFont typeface = typeface(words, style);
        Font font = new Font(typeface, style.size() * scale, Font.NORMAL, new GrayColor(style.gray));
        Chunk chunk = new Chunk(printable(words, typeface), font);
        chunk.setSplitCharacter((start, current, end, letters, chunks) -> mayBreak(letters, current));
        Phrase phrase = new Phrase(style.size() * scale * LINE);
        phrase.add(chunk);
        return phrase;
    }

    /** A line ends at a space, never inside a mark such as VS-03, nor between a figure and its unit. */
    private static boolean mayBreak(char[] letters, int at) {
        boolean afterFigure = at > 0 && Character.isDigit(letters[at - 1]);
        boolean beforeUnit = at + 1 < letters.length && !Character.isDigit(letters[at + 1]);
        return letters[at] == ' ' && !(afterFigure && beforeUnit);
    }

    /** How wide words are in one line, in points. */
    float width(String words, Style style) {
        BaseFont typeface = typeface(words, style);
        return typeface.getWidthPoint(printable(words, typeface), style.size());
    }

    /** The typeface of words in a style. */
    BaseFont typeface(String words, Style style) {
        return switch (style) {
            case BOARD -> words.codePoints().allMatch(heading::charExists) ? heading : bold;
            case HEADING, STRONG, FIRM -> bold;
            case PLAIN, SMALL -> plain;
        };
    }

    /** The words with every letter that a typeface has, and a mark in the place of any other. */
    String printable(String words, BaseFont typeface) {
        StringBuilder shown = new StringBuilder();
        Normalizer.normalize(words, Normalizer.Form.NFC).codePoints().forEach(letter -> {
            if (letter == '\n' || typeface.charExists(letter)) {
                shown.appendCodePoint(letter);
            } else if (letter == ARROW) {
                shown.append(TO);
            } else if (letter == NARROW_SPACE) {
                shown.append(UNBROKEN_SPACE);
            } else if (Character.isWhitespace(letter) || Character.isISOControl(letter)) {
                shown.append(' ');
            } else {
                shown.append(MISSING);
                missing = true;
            }
        });
        return shown.toString();
    }

    /** Whether a letter could not be printed so far. */
    boolean isMissing() {
        return missing;
    }

    private static BaseFont embedded(String path) {
        try (InputStream in = Lettering.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("the program comes without its typeface " + path);
            }
            String name = path.substring(path.lastIndexOf('/') + 1);
            return BaseFont.createFont(name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, in.readAllBytes(), null);
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface " + path + " cannot be read", e);
        } catch (DocumentException e) {
            throw new IllegalStateException("the typeface " + path + " cannot be embedded", e);
        }
    }
}
