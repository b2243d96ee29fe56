package witnessmark.report;

import com.lowagie.text.Chunk;
import com.lowagie.text.Element;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.wording.Texts;

/** Lays a build sheet out on pages. The same sheet always gives the same bytes. */
public final class BuildSheetPdf {
    private final SheetPages pages;

    /** @param texts what every sheet says at its edges */
    public BuildSheetPdf(Texts texts) {
        this.pages = new SheetPages(texts);
    }

    /** The pages of a sheet. */
    public Pdf of(BuildSheet sheet) {
        return pages.of(
                new SheetEdges(
                        sheet.title(), sheet.logbook(), sheet.day(), sheet.printed(), sheet.made(), sheet.caution()),
                (letters, width) -> content(sheet, letters, width));
    }

    private static List<Element> content(BuildSheet sheet, Lettering letters, float width) {
        SheetCells cells = new SheetCells(letters);
        BuildBoxes boxes = new BuildBoxes(letters, width);
        BuildFindings findings = new BuildFindings(letters, width);
        List<Element> content = new ArrayList<>();
        content.addAll(cells.top(sheet.title(), sheet.board(), sheet.under(), width));
        if (sheet.lessons() != null) {
            content.add(findings.group(sheet.lessons()));
        }
        if (sheet.answers() != null) {
            content.add(boxes.byHand(sheet.answers()));
        }
        sheet.steps().forEach(step -> content.addAll(boxes.step(step)));
        BuildSheet.Stands stands = sheet.stands();
        if (stands != null) {
            content.add(Chunk.NEXTPAGE);
            content.add(cells.board(sheet.title(), stands.title(), width));
            stands.groups().forEach(group -> content.add(findings.group(group)));
            add(content, boxes, stands.workedOut());
            if (stands.signed() != null) {
                content.add(findings.signed(stands.signed()));
            }
        }
        if (sheet.byHand() != null) {
            content.add(boxes.byHand(sheet.byHand()));
        }
        return content;
    }

    private static void add(List<Element> content, BuildBoxes boxes, BuildSheet.@Nullable Step step) {
        if (step != null) {
            content.addAll(boxes.step(step));
        }
    }
}
