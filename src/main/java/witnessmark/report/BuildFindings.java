package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import witnessmark.report.BuildSheet.Answer;
import witnessmark.report.BuildSheet.Group;
import witnessmark.report.BuildSheet.Signed;
import witnessmark.report.BuildSheet.Sum;
import witnessmark.report.Lettering.Style;

/** How figures stand: the mark, the answer, under it what it rests on and the column it adds up of. */
final class BuildFindings {
    /** In points. */
    private static final float MARK = 84;

    private final Lettering letters;
    private final SheetCells cells;
    private final float width;

    /** @param width of the page between its margins, in points */
    BuildFindings(Lettering letters, float width) {
        this.letters = letters;
        this.cells = new SheetCells(letters);
        this.width = width;
    }

    /** Kinds that stand alike; the heading is on every page they go on to. */
    PdfPTable group(Group group) {
        PdfPTable table = SheetCells.table(MARK, width - MARK);
        table.setSpacingBefore(12);
        table.setHeaderRows(1);
        table.setSplitLate(true);
        PdfPCell heading = cells.heading(group.heading(), Style.HEADING);
        heading.setColspan(2);
        table.addCell(heading);
        group.answers().forEach(answer -> add(table, answer));
        return table;
    }

    /** The answer, and its column as a row of its own that may go on to the next page: it says itself what it is of. */
    private void add(PdfPTable table, Answer answer) {
        if (answer.column().isEmpty()) {
            table.addCell(SheetCells.underlined(mark(answer)));
            table.addCell(SheetCells.underlined(caution(told(answer), answer)));
            return;
        }
        table.addCell(mark(answer));
        table.addCell(told(answer));
        table.addCell(SheetCells.underlined(row()));
        PdfPCell cell = row();
        cell.addElement(new Paragraph(letters.set(answer.columnOf(), Style.SMALL)));
        cell.addElement(column(answer.column()));
        table.addCell(SheetCells.underlined(caution(cell, answer)));
    }

    /** The mark with its word beside it: a shape never stands alone. */
    private PdfPCell mark(Answer answer) {
        PdfPCell cell = row();
        cell.addElement(letters.set(answer.word(), Style.PLAIN));
        cell.setPaddingRight(4);
        if (answer.state() != null) {
            cell.setCellEvent(new PaperMark(answer.state()));
            cell.setPaddingLeft(PaperMark.SIDE + 4);
        }
        return cell;
    }

    private PdfPCell told(Answer answer) {
        PdfPCell cell = row();
        cell.addElement(new Paragraph(letters.set(answer.sentence(), Style.STRONG)));
        answer.accepted().forEach(line -> cell.addElement(new Paragraph(letters.set(line, Style.FIRM))));
        answer.beside().forEach(line -> cell.addElement(new Paragraph(letters.set(line, Style.PLAIN))));
        return cell;
    }

    private PdfPCell caution(PdfPCell cell, Answer answer) {
        if (!answer.caution().isEmpty()) {
            cell.addElement(new Paragraph(letters.set(answer.caution(), Style.SMALL)));
        }
        return cell;
    }

    /** Figures under each other as they are added by hand, the sum under a line. */
    private PdfPTable column(List<Sum> lines) {
        float figures = 30;
        for (Sum line : lines) {
            figures = Math.max(figures, letters.width(line.figure(), Style.FIRM) + 6);
        }
        float words = Math.min(310, width - MARK - figures);
        float rest = Math.max(0.1f, width - MARK - figures - words);
        PdfPTable table = SheetCells.table(words, figures, rest);
        table.setSpacingBefore(2);
        table.setSpacingAfter(3);
        for (int at = 0; at < lines.size(); at++) {
            boolean sum = at == lines.size() - 1;
            Style style = sum ? Style.FIRM : Style.PLAIN;
            table.addCell(line(lines.get(at).what(), style, Element.ALIGN_LEFT, sum));
            table.addCell(line(lines.get(at).figure(), style, Element.ALIGN_RIGHT, sum));
            table.addCell(SheetCells.plain(letters.set("", Style.PLAIN)));
        }
        return table;
    }

    private PdfPCell line(String words, Style style, int side, boolean sum) {
        PdfPCell cell = SheetCells.plain(letters.set(words, style));
        cell.setPadding(0);
        cell.setPaddingBottom(2.5f);
        cell.setHorizontalAlignment(side);
        cell.setVerticalAlignment(Element.ALIGN_BOTTOM);
        return sum ? SheetCells.summed(cell) : cell;
    }

    private static PdfPCell row() {
        PdfPCell cell = new PdfPCell();
        cell.setBorder(Rectangle.NO_BORDER);
        cell.setPaddingTop(0);
        cell.setPaddingLeft(0);
        cell.setPaddingBottom(4);
        return cell;
    }

    /** What stood when it was signed beside what stands now. */
    PdfPTable signed(Signed signed) {
        PdfPTable table = SheetCells.table(width * 0.36f, width * 0.32f, width * 0.32f);
        table.setSpacingBefore(14);
        table.setHeaderRows(signed.rows().isEmpty() ? 1 : 2);
        table.setSplitLate(true);
        PdfPCell heading = cells.heading(signed.heading(), Style.HEADING);
        heading.setColspan(signed.titles().size());
        table.addCell(heading);
        if (signed.rows().isEmpty()) {
            PdfPCell note = SheetCells.plain(letters.set(signed.note(), Style.PLAIN));
            note.setColspan(signed.titles().size());
            note.setPaddingLeft(0);
            table.addCell(note);
            return table;
        }
        signed.titles().forEach(title -> table.addCell(cells.heading(title, Style.SMALL)));
        for (List<String> each : signed.rows()) {
            for (String words : each) {
                PdfPCell cell = SheetCells.underlined(row());
                cell.setPaddingRight(6);
                cell.addElement(new Paragraph(letters.set(words, Style.PLAIN)));
                table.addCell(cell);
            }
        }
        return table;
    }
}
