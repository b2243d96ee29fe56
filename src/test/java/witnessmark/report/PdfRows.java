package witnessmark.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * The lines of a PDF as somebody reads them, from left to right and from top to bottom (Apache PDFBox): where there is a
 * gap between words, another cell begins.
 *
 * @param pages of each page its lines, each with its cells
 */
public record PdfRows(List<List<List<String>>> pages) {
    private static final Pattern FIGURE = Pattern.compile("[-\u2212]?[0-9\u2009]+(\\.[0-9]+)?");
    private static final String GAP = "\t";

    public static PdfRows of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<List<List<String>>> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setSortByPosition(true);
                text.setWordSeparator(GAP);
                text.setStartPage(page);
                text.setEndPage(page);
                pages.add(text.getText(document)
                        .lines()
                        .map(line -> List.of(line.split(GAP)))
                        .toList());
            }
            return new PdfRows(pages);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The lines of all pages. */
    public List<List<String>> all() {
        return pages.stream().flatMap(List::stream).toList();
    }

    /** The first line that begins with a cell. */
    public List<String> row(String first) {
        return all().stream()
                .filter(row -> row.get(0).equals(first))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line begins with " + first));
    }

    /** What a cell says as a figure; empty where it is none. */
    public static Optional<BigDecimal> figure(String cell) {
        return FIGURE.matcher(cell).matches()
                ? Optional.of(new BigDecimal(cell.replace("\u2009", "").replace('\u2212', '-')))
                : Optional.empty();
    }
}
