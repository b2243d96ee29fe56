package witnessmark.report;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * Where things stand on the pages of a PDF (Apache PDFBox), in points from the upper left.
 *
 * @param pages the paper of each
 * @param boxes of each page the rectangles that are drawn
 * @param letters of each page every letter, spaces left out
 */
public record PdfShapes(List<PDRectangle> pages, List<List<Rectangle2D>> boxes, List<List<Letter>> letters) {
    /** A letter and where it stands. */
    public record Letter(String letter, double left, double right, double base) {}

    public static PdfShapes of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<PDRectangle> pages = new ArrayList<>();
            List<List<Rectangle2D>> boxes = new ArrayList<>();
            List<List<Letter>> letters = new ArrayList<>();
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                pages.add(document.getPage(page).getMediaBox());
                Boxes drawn = new Boxes(document.getPage(page));
                drawn.processPage(document.getPage(page));
                boxes.add(drawn.boxes);
                Letters read = new Letters();
                read.setStartPage(page + 1);
                read.setEndPage(page + 1);
                read.getText(document);
                letters.add(read.letters);
            }
            return new PdfShapes(pages, boxes, letters);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Letters that stand over each other, or nearer to the edge of the paper than this: none on a page that is whole. */
    public List<String> broken(double edge) {
        List<String> broken = new ArrayList<>();
        for (int page = 0; page < pages.size(); page++) {
            List<Letter> all = letters.get(page);
            for (Letter one : all) {
                if (one.left() < edge
                        || one.right() > pages.get(page).getWidth() - edge
                        || one.base() < edge
                        || one.base() > pages.get(page).getHeight() - edge) {
                    broken.add("page " + (page + 1) + ": " + one + " at the edge");
                }
                for (Letter other : all) {
                    if (one != other
                            && Math.abs(one.base() - other.base()) < 4
                            && one.left() < other.right() - 1.2
                            && other.left() < one.right() - 1.2) {
                        broken.add("page " + (page + 1) + ": " + one + " over " + other);
                    }
                }
            }
        }
        return broken;
    }

    private static final class Letters extends PDFTextStripper {
        private final List<Letter> letters = new ArrayList<>();

        @Override
        protected void writeString(String text, List<TextPosition> positions) {
            for (TextPosition at : positions) {
                if (!at.getUnicode().isBlank()) {
                    letters.add(new Letter(
                            at.getUnicode(), at.getXDirAdj(), at.getXDirAdj() + at.getWidthDirAdj(), at.getYDirAdj()));
                }
            }
        }
    }

    /** Keeps rectangles that are stroked; nothing else matters here. */
    private static final class Boxes extends PDFGraphicsStreamEngine {
        private final List<Rectangle2D> boxes = new ArrayList<>();
        private final List<Rectangle2D> path = new ArrayList<>();

        Boxes(PDPage page) {
            super(page);
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            Rectangle2D box = new Rectangle2D.Double(p0.getX(), p0.getY(), 0, 0);
            box.add(p2);
            path.add(box);
        }

        @Override
        public void strokePath() {
            boxes.addAll(path);
            path.clear();
        }

        @Override
        public void endPath() {
            path.clear();
        }

        @Override
        public void fillPath(int rule) {
            path.clear();
        }

        @Override
        public void fillAndStrokePath(int rule) {
            strokePath();
        }

        @Override
        public Point2D getCurrentPoint() {
            return new Point2D.Double();
        }

        @Override
        public void drawImage(PDImage image) {}

        @Override
        public void clip(int rule) {}

        @Override
        public void moveTo(float x, float y) {}

        @Override
        public void lineTo(float x, float y) {}

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {}

        @Override
        public void closePath() {}

        @Override
        public void shadingFill(COSName name) {}
    }
}
