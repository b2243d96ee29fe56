package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.GrayColor;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.ArrayList;
import java.util.List;
import witnessmark.report.Lettering.Style;

/** What the tables of all sheets are put together of: the board, headings over a firm line, rows over a quiet one. */
final class SheetCells {
    private static final float HAIRLINE = 0.4f;
    private static final float BOARD_GRAY = 0.13f;
    private static final float LINE_GRAY = 0.6f;

    private final Lettering letters;

    SheetCells(Lettering letters) {
        this.letters = letters;
    }

    /** The dark strip over a page, one line high: what sheet it is, and what it comes to. */
    PdfPTable board(String left, String right, float width) {
        PdfPTable board = table(width * 0.58f, width * 0.42f);
        board.addCell(boardCell(left, Element.ALIGN_LEFT));
        board.addCell(boardCell(right, Element.ALIGN_RIGHT));
        board.setSpacingAfter(4);
        return board;
    }

    /** What a page begins with: its board, and the lines under it, of which the first stands out. */
    List<Element> top(String title, String right, List<String> under, float width) {
        List<Element> top = new ArrayList<>();
        top.add(board(title, right, width));
        Style style = Style.STRONG;
        for (String line : under) {
            top.add(new Paragraph(letters.set(line, style)));
            style = Style.PLAIN;
        }
        return top;
    }

    private PdfPCell boardCell(String words, int side) {
        PdfPCell cell = plain(letters.set(words, Style.BOARD));
        cell.setBackgroundColor(new GrayColor(BOARD_GRAY));
        cell.setHorizontalAlignment(side);
        cell.setVerticalAlignment(Element.ALIGN_MIDDLE);
        cell.setPadding(7);
        cell.setPaddingTop(4);
        return cell;
    }

    /** Words over a column or a section, on a firm line. */
    PdfPCell heading(String words, Style style) {
        PdfPCell cell = plain(letters.set(words, style));
        cell.setVerticalAlignment(Element.ALIGN_BOTTOM);
        cell.setPaddingLeft(0);
        cell.setPaddingRight(8);
        cell.setPaddingBottom(4);
        return underlined(cell, 0, 2 * HAIRLINE);
    }

    /** Without any line. */
    static PdfPCell plain(Phrase words) {
        PdfPCell cell = new PdfPCell(words);
        cell.setLeading(0, Lettering.LINE);
        cell.setBorder(Rectangle.NO_BORDER);
        return cell;
    }

    /** With the quiet line under a row. */
    static PdfPCell underlined(PdfPCell cell) {
        return underlined(cell, LINE_GRAY, HAIRLINE);
    }

    /** With a firm line over what lines come to. */
    static PdfPCell summed(PdfPCell cell) {
        cell.setBorder(Rectangle.TOP | Rectangle.BOTTOM);
        cell.setBorderWidthTop(HAIRLINE);
        cell.setBorderColorTop(new GrayColor(0));
        cell.setBorderWidthBottom(HAIRLINE);
        cell.setBorderColorBottom(new GrayColor(LINE_GRAY));
        return cell;
    }

    /** Between two firm lines: what all of a table comes to. */
    static PdfPCell totalled(PdfPCell cell) {
        cell.setBorder(Rectangle.TOP | Rectangle.BOTTOM);
        cell.setBorderWidth(2 * HAIRLINE);
        cell.setBorderColor(new GrayColor(0));
        return cell;
    }

    private static PdfPCell underlined(PdfPCell cell, float gray, float line) {
        cell.setBorder(Rectangle.BOTTOM);
        cell.setBorderWidth(line);
        cell.setBorderColor(new GrayColor(gray));
        return cell;
    }

    /** A table of columns this wide, in points. */
    static PdfPTable table(float... widths) {
        PdfPTable table = new PdfPTable(widths);
        table.setTotalWidth(widths);
        table.setLockedWidth(true);
        table.setHorizontalAlignment(Element.ALIGN_LEFT);
        return table;
    }
}
