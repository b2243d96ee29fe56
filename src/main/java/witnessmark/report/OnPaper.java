package witnessmark.report;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.FontMapper;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPCellEvent;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfTemplate;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.function.BiConsumer;
import witnessmark.chart.ChartStyle;

/** Something that draws itself, in a cell: as lines and letters that can be selected, never as a picture of dots. */
final class OnPaper implements PdfPCellEvent {
    /** Of the letters in a drawing, in points. */
    private static final float SIZE = 8.5f;

    private static final float TITLE = 11;

    private final Lettering letters;
    private final BiConsumer<Graphics2D, Rectangle2D> drawing;

    /** @param drawing told the room it has, its upper left corner at the origin, in points */
    OnPaper(Lettering letters, BiConsumer<Graphics2D, Rectangle2D> drawing) {
        this.letters = letters;
        this.drawing = drawing;
    }

    /** Dark ink on white, in the letters of the document. */
    static ChartStyle style() {
        return style(1);
    }

    /** The same for a drawing that is made so many times as large and scaled down. */
    static ChartStyle style(int fine) {
        Font plain = plain();
        return ChartStyle.onPaper(plain.deriveFont(fine * SIZE), plain.deriveFont(fine * TITLE));
    }

    private static Font plain() {
        try (InputStream in = OnPaper.class.getResourceAsStream(Lettering.PLAIN_FILE)) {
            if (in == null) {
                throw new IllegalStateException("the program comes without its typeface " + Lettering.PLAIN_FILE);
            }
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface " + Lettering.PLAIN_FILE + " cannot be read", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the typeface " + Lettering.PLAIN_FILE + " is none", e);
        }
    }

    @Override
    public void cellLayout(PdfPCell cell, Rectangle place, PdfContentByte[] canvases) {
        PdfContentByte pen = canvases[PdfPTable.LINECANVAS];
        PdfTemplate room = pen.createTemplate(place.getWidth(), place.getHeight());
        Graphics2D g = room.createGraphics(place.getWidth(), place.getHeight(), new Faces());
        drawing.accept(g, new Rectangle2D.Double(0, 0, place.getWidth(), place.getHeight()));
        g.dispose();
        pen.addTemplate(room, place.getLeft(), place.getBottom());
    }

    /** The typefaces of the document for those that a drawing asks for. */
    private final class Faces implements FontMapper {
        @Override
        public BaseFont awtToPdf(Font font) {
            return letters.typeface("", font.isBold() ? Lettering.Style.FIRM : Lettering.Style.PLAIN);
        }

        @Override
        public Font pdfToAwt(BaseFont font, int size) {
            return plain().deriveFont((float) size);
        }
    }
}
