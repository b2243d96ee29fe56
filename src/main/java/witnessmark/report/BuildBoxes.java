package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.GrayColor;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import witnessmark.report.BuildSheet.Block;
import witnessmark.report.BuildSheet.ByHand;
import witnessmark.report.BuildSheet.Cell;
import witnessmark.report.BuildSheet.Kind;
import witnessmark.report.BuildSheet.Line;
import witnessmark.report.BuildSheet.Look;
import witnessmark.report.BuildSheet.Step;
import witnessmark.report.Lettering.Style;

/** Figures in boxes under the number of their cylinder, empty ones to be written in. */
final class BuildBoxes {
    /** In points: what the words before the boxes take at most, and at least. */
    private static final float WORDS = 214;

    private static final float WORDS_LEAST = 160;

    /** How wide a box is where there is room. */
    private static final float BOX = 60;

    /** Room to write by hand. */
    private static final float TO_WRITE = 17;

    private static final float READ = 13;
    private static final float INSET = 3;

    /** So that rounding never breaks a figure that just fits. */
    private static final float SPARE = 1.5f;

    /** Before a label beside a line to write on. */
    private static final float GAP = 8;

    /** Grey of the frames: what is measured stands out before what is to be written in. */
    private static final float QUIET = 0.35f;

    private static final float LIGHT = 0.78f;

    private final Lettering letters;
    private final SheetCells cells;
    private final float width;

    /** @param width of the page between its margins, in points */
    BuildBoxes(Lettering letters, float width) {
        this.letters = letters;
        this.cells = new SheetCells(letters);
        this.width = width;
    }

    /** A step, a table for each of its blocks; on each page they go on to, heading and columns are repeated. */
    List<Element> step(Step step) {
        List<Element> all = new ArrayList<>();
        for (Block block : step.blocks()) {
            all.add(block(all.isEmpty() ? step.heading() : "", block));
        }
        if (step.byHand() != null) {
            all.add(byHand(step.byHand()));
        }
        return all;
    }

    private PdfPTable block(String heading, Block block) {
        PdfPTable table = SheetCells.table(width);
        table.setSpacingBefore(heading.isEmpty() ? 6 : 12);
        table.setSplitLate(true);
        int over = 0;
        if (!heading.isEmpty()) {
            table.addCell(cells.heading(heading, Style.HEADING));
            over++;
        }
        float box = box(block);
        if (!block.counted().isEmpty() || block.columns().stream().anyMatch(title -> !title.isEmpty())) {
            table.addCell(whole(titles(block, box)));
            over++;
        }
        table.setHeaderRows(over);
        block.kinds().forEach(kind -> table.addCell(whole(kind(block, kind, box))));
        return table;
    }

    /** A row that goes on to the next page whole. */
    private static PdfPCell whole(PdfPTable inside) {
        PdfPCell cell = new PdfPCell(inside);
        cell.setBorder(Rectangle.NO_BORDER);
        cell.setPaddingTop(2);
        return cell;
    }

    private PdfPTable kind(Block block, Kind kind, float box) {
        PdfPTable table = table(block, box);
        float scale = scale(block, box);
        boolean oneLine =
                kind.lines().size() == 1 && kind.lines().get(0).where().isEmpty();
        if (!oneLine) {
            PdfPCell name = words(kind.name(), kind.may());
            name.setColspan(table.getNumberOfColumns());
            table.addCell(name);
        }
        for (Line line : kind.lines()) {
            table.addCell(oneLine ? words(kind.name(), kind.may()) : where(line.where()));
            line.cells().forEach(cell -> table.addCell(figure(cell, box, scale)));
            rest(table);
        }
        kind.notes().forEach(note -> table.addCell(note(note, table.getNumberOfColumns())));
        return table;
    }

    /** Words, a box for each column, and what is left of the width. */
    private PdfPTable table(Block block, float box) {
        int count = block.columns().size();
        float words = Math.min(WORDS, width - count * box);
        float[] widths = new float[count + 2];
        Arrays.fill(widths, box);
        widths[0] = words;
        widths[count + 1] = Math.max(0.1f, width - words - count * box);
        return SheetCells.table(widths);
    }

    private float box(Block block) {
        float most = (width - WORDS_LEAST) / block.columns().size();
        return Math.min(most, Math.max(BOX, needed(block) + 2 * INSET));
    }

    private float scale(Block block, float box) {
        return Math.min(1, (box - 2 * INSET) / Math.max(1, needed(block)));
    }

    /** The widest word of all cells and titles: words of one cell may stand under each other. */
    private float needed(Block block) {
        float needed = 0;
        for (String title : block.columns()) {
            for (String word : title.split(" ")) {
                needed = Math.max(needed, letters.width(word, Style.SMALL));
            }
        }
        for (Kind kind : block.kinds()) {
            for (Line line : kind.lines()) {
                for (Cell cell : line.cells()) {
                    for (String word : cell.words().split(" ")) {
                        needed = Math.max(needed, letters.width(word, Style.FIRM));
                    }
                }
            }
        }
        return needed + SPARE;
    }

    private PdfPTable titles(Block block, float box) {
        PdfPTable table = table(block, box);
        PdfPCell by = SheetCells.plain(letters.set(block.counted(), Style.SMALL));
        by.setPaddingLeft(0);
        by.setVerticalAlignment(Element.ALIGN_BOTTOM);
        table.addCell(by);
        for (String title : block.columns()) {
            PdfPCell cell = SheetCells.plain(letters.set(title, Style.SMALL, scale(block, box)));
            cell.setPadding(INSET);
            cell.setPaddingTop(1);
            cell.setHorizontalAlignment(Element.ALIGN_RIGHT);
            cell.setVerticalAlignment(Element.ALIGN_BOTTOM);
            table.addCell(cell);
        }
        rest(table);
        return table;
    }

    private static void rest(PdfPTable table) {
        PdfPCell rest = new PdfPCell();
        rest.setBorder(Rectangle.NO_BORDER);
        table.addCell(rest);
    }

    private PdfPCell words(String name, String may) {
        PdfPCell cell = new PdfPCell();
        cell.setBorder(Rectangle.NO_BORDER);
        cell.setPadding(0);
        cell.setPaddingTop(1);
        cell.setPaddingRight(6);
        cell.setPaddingBottom(3);
        Paragraph all = new Paragraph();
        all.setLeading(Style.FIRM.size() * Lettering.LINE);
        all.add(letters.set(name, Style.FIRM));
        all.add(letters.set("   " + may, Style.SMALL));
        cell.addElement(all);
        return cell;
    }

    private PdfPCell where(String spot) {
        PdfPCell cell = SheetCells.plain(letters.set(spot, Style.PLAIN));
        cell.setPadding(0);
        cell.setPaddingLeft(8);
        cell.setPaddingRight(6);
        cell.setPaddingBottom(3);
        cell.setVerticalAlignment(Element.ALIGN_MIDDLE);
        return cell;
    }

    private PdfPCell figure(Cell cell, float box, float scale) {
        PdfPCell shown = new PdfPCell();
        shown.setBorder(Rectangle.NO_BORDER);
        shown.setPadding(INSET);
        shown.setPaddingTop(0);
        shown.setMinimumHeight(cell.look() == Look.TO_WRITE ? TO_WRITE : READ);
        if (cell.look() == Look.NOT_ASKED) {
            return shown;
        }
        shown.setBorder(Rectangle.BOX);
        shown.setBorderWidth(cell.look() == Look.OUTSIDE ? 1.6f : 0.5f);
        shown.setBorderColor(new GrayColor(
                switch (cell.look()) {
                    case TO_WRITE, NOT_ASKED -> LIGHT;
                    case FIGURE -> QUIET;
                    case OUTSIDE -> 0;
                }));
        Style style = cell.look() == Look.OUTSIDE ? Style.FIRM : Style.PLAIN;
        for (String line : lines(cell.words(), box - 2 * INSET, style, scale)) {
            Paragraph set = new Paragraph(letters.set(line, style, scale));
            set.setAlignment(Element.ALIGN_RIGHT);
            shown.addElement(set);
        }
        return shown;
    }

    /** In one line where it fits, else each word under the other: a figure is never broken. */
    private List<String> lines(String words, float room, Style style, float scale) {
        return words.isEmpty()
                ? List.of()
                : letters.width(words, style) * scale <= room ? List.of(words) : List.of(words.split(" "));
    }

    private PdfPCell note(String words, int columns) {
        PdfPCell note = SheetCells.plain(letters.set(words, Style.SMALL));
        note.setColspan(columns);
        note.setPadding(0);
        note.setPaddingLeft(8);
        note.setPaddingTop(1);
        note.setPaddingBottom(3);
        return note;
    }

    /** Lines to write on, beside each other. */
    PdfPTable byHand(ByHand hand) {
        int count = hand.labels().size();
        float[] widths = new float[2 * count];
        float label = 0;
        for (int at = 0; at < count; at++) {
            widths[2 * at] = letters.width(hand.labels().get(at), Style.SMALL) + GAP + 4;
            label += widths[2 * at];
        }
        for (int at = 0; at < count; at++) {
            widths[2 * at + 1] = Math.max(20, (width - label) / count);
        }
        PdfPTable table = SheetCells.table(widths);
        table.setKeepTogether(true);
        table.setSpacingBefore(8);
        for (String each : hand.labels()) {
            PdfPCell before = SheetCells.plain(letters.set(each, Style.SMALL));
            before.setPaddingLeft(each.equals(hand.labels().get(0)) ? 0 : GAP);
            before.setVerticalAlignment(Element.ALIGN_BOTTOM);
            before.setMinimumHeight(TO_WRITE);
            table.addCell(before);
            PdfPCell line = new PdfPCell();
            line.setBorder(Rectangle.BOTTOM);
            line.setBorderWidth(0.5f);
            table.addCell(line);
        }
        if (!hand.note().isEmpty()) {
            PdfPCell note = note(hand.note(), 2 * count);
            note.setPaddingLeft(0);
            table.addCell(note);
        }
        return table;
    }
}
