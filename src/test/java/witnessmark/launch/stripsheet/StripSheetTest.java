package witnessmark.launch.stripsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.logbook.strip.SeeStrip;
import witnessmark.logbook.strip.WriteStripSheet;
import witnessmark.quantity.Moment;
import witnessmark.report.PdfText;
import witnessmark.report.StripSheet;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/**
 * The report of a strip on paper, read back by a library that did not write it (Apache PDFBox). What has to stand there comes from the
 * tables of the season folder, which nothing of the program had a hand in (design 06, tables 14.11 and 14.12).
 */
class StripSheetTest {
    private final Texts texts = Texts.in(Locale.UK);
    private final Measures measures = new Measures(texts, Units.METRIC);

    private static Id<Build> build(View view, String engine, int number) {
        return SeeStrip.find(
                        view,
                        view.facts()
                                .of(Engine.class)
                                .named(engine)
                                .orElseThrow()
                                .id(),
                        number)
                .orElseThrow()
                .id();
    }

    private byte[] pdf(View view, Id<Build> build) {
        Moment printed = Moment.of(Instant.parse("2026-12-18T09:00:00Z"), view.zone());
        return new StripSheetPaper(texts, measures)
                .apply(WriteStripSheet.facts(view, build, "Marrowgate Racing", printed)
                        .orElseThrow())
                .bytes();
    }

    private PdfText read(View view, String engine, int number) throws IOException {
        byte[] pdf = pdf(view, build(view, engine, number));
        Path folder = Files.createDirectories(Path.of("target", "pictures")); // beside the pictures, for people
        Files.write(folder.resolve("strip-" + engine + "-" + number + ".pdf"), pdf);
        return PdfText.of(pdf);
    }

    /** The cells of rows of the season folder that hold one of the texts; no cell of this table holds a comma within. */
    private static List<String[]> findings(String build) throws IOException {
        List<String[]> rows = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("sample-season", "findings.csv"))) {
            String[] cells = line.split(",", -1);
            if (cells[3].equals(build)) {
                rows.add(cells);
            }
        }
        return rows;
    }

    @Test
    void what_was_found_in_april_stands_there_with_its_part_and_what_was_there_before() throws IOException {
        PdfText text = read(SampleViews.opening(), "K05", 2);
        assertThat(text.allEmbedded()).isTrue();
        assertThat(text.solid())
                .contains(
                        solid("Strip report of K05, build 2"),
                        solid("Opened Wed 15 Apr 2026 at 6.08 h since its bottom end was closed."),
                        solid("Looked at by Crew chief, Wed 15 Apr 2026."),
                        solid("BE-05a, 6.08 h run by then"),
                        solid("1 light"),
                        solid(
                                "fretted, in the middle, middle of its width: its back polished brown; noted, not followed up"),
                        solid("Worse since. Build 1: no mark, as it should be"),
                        solid("What the trade asks of such marks"),
                        solid("Housing lost its grip on the shells"),
                        solid("When was the wrench last calibrated?"),
                        solid("for qualified inspectors"),
                        solid("Nothing here says that an engine may run"))
                .doesNotContain("\uFFFD");
        List<String[]> written = findings("K05/2");
        assertThat(written).hasSizeGreaterThan(3);
        for (String[] cells : written) {
            assertThat(text.solid()).contains(solid(cells[9]));
        }
    }

    @Test
    void it_is_the_page_it_was() {
        View view = SampleViews.opening();
        Moment printed = Moment.of(Instant.parse("2026-12-18T09:00:00Z"), view.zone());
        StripSheet sheet = new StripSheetWords(texts, measures)
                .apply(WriteStripSheet.facts(view, build(view, "K05", 2), "Marrowgate Racing", printed)
                        .orElseThrow());
        StringBuilder out = new StringBuilder(sheet.title() + " | " + sheet.board() + "\n");
        sheet.under().forEach(line -> out.append(line).append('\n'));
        for (StripSheet.Area area : sheet.areas()) {
            out.append(area.heading()).append(' ').append(sheet.titles()).append('\n');
            for (StripSheet.Line line : area.lines()) {
                out.append("  ")
                        .append(line.name())
                        .append(' ')
                        .append(line.notes())
                        .append('\n');
                line.spots().forEach(spot -> out.append("    ").append(spot).append('\n'));
            }
        }
        sheet.tables()
                .forEach(table -> out.append(table.heading())
                        .append(' ')
                        .append(table.rows())
                        .append('\n'));
        GoldenText.check("strip_sheet", out.append(sheet.byHand()).append('\n').toString());
    }

    /** Everything written of the build that came apart in June is on it, with the incident it is evidence of. */
    @Test
    void every_finding_of_a_failed_engine_is_on_paper_as_evidence_of_its_incident() throws IOException {
        PdfText text = read(SampleViews.end(), "K05", 3);
        List<String[]> written = findings("K05/3");
        assertThat(written).isNotEmpty();
        for (String[] cells : written) {
            String words = cells[17].replace("\"", "");
            assertThat(text.solid()).contains(solid(words.split("[;.]")[0]));
        }
        assertThat(text.solid()).contains(solid("4 failed"), solid("Evidence of INC-05"));
    }

    /** Boxes to be filled in by hand: for every cylinder the five grades as figures, who looks and when, and some forty on a page. */
    @Test
    void an_engine_nobody_looked_at_yet_is_a_form_to_be_filled_in() throws IOException {
        View view = SampleViews.opening();
        PdfText text = read(view, "K03", 1);
        String all = text.solid();
        int circles = all.split("01234", -1).length - 1;
        assertThat(circles)
                .isEqualTo(SeeStrip.of(view, build(view, "K03", 1))
                        .orElseThrow()
                        .report()
                        .places());
        assertThat(text.pages().size()).isBetween(circles / 45, circles / 30 + 1);
        assertThat(all)
                .contains(
                        solid("Nothing of 172 places written down."),
                        solid("Looked at by"),
                        solid("What else is seen"),
                        solid("0 as it should be"),
                        solid("Strip report of K03, build 1"));
    }

    @Test
    void the_same_strip_on_the_same_day_gives_the_same_bytes_and_one_ink() throws IOException {
        View view = SampleViews.opening();
        byte[] pdf = pdf(view, build(view, "K05", 2));
        assertThat(pdf(view, build(view, "K05", 2))).isEqualTo(pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            var image = new PDFRenderer(document).renderImageWithDPI(0, 60, ImageType.RGB);
            int most = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    int rgb = image.getRGB(x, y);
                    int red = rgb >> 16 & 0xFF;
                    int green = rgb >> 8 & 0xFF;
                    int blue = rgb & 0xFF;
                    most = Math.max(most, Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue)));
                }
            }
            assertThat(most).as("a grey has no colour").isLessThan(16);
        }
    }
}
