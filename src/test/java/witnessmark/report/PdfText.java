package witnessmark.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * A PDF read back by a library that did not write it (Apache PDFBox).
 *
 * @param pages the text of each page, as it can be selected
 * @param fonts every typeface used, by the name in the file
 * @param allEmbedded whether all of them are in the file
 */
public record PdfText(List<String> pages, List<String> fonts, boolean allEmbedded) {
    public static PdfText of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            List<String> fonts = new ArrayList<>();
            boolean embedded = true;
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(page);
                text.setEndPage(page);
                pages.add(text.getText(document));
                PDPage read = document.getPage(page - 1);
                for (var name : read.getResources().getFontNames()) {
                    PDFont font = read.getResources().getFont(name);
                    fonts.add(font.getName());
                    embedded &= font.isEmbedded();
                }
            }
            return new PdfText(pages, fonts, embedded);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All of it without any space: a cell may break its words at any of them. */
    public String solid() {
        return solid(String.join("", pages));
    }

    /** Words without any space. */
    public static String solid(String words) {
        return words.replaceAll("[\\s\\p{Z}]+", "");
    }
}
