package witnessmark.launch.facesheet;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.FaceMethod;
import witnessmark.domain.Part;
import witnessmark.logbook.View;
import witnessmark.logbook.faces.FaceInSight;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.SeeFaces;
import witnessmark.logbook.faces.WriteFaceSheet;
import witnessmark.quantity.Moment;
import witnessmark.report.PdfText;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/**
 * A face on paper, read back by a library that did not write it (Apache PDFBox). What has to stand there comes from the
 * tables of the season folder, which nothing of the program had a hand in.
 */
class FaceSheetTest {
    private static final double POINTS_FOR_ONE_MM = 1.25;

    private final Texts texts = Texts.in(Locale.UK);
    private final Measures measures = new Measures(texts, Units.METRIC);

    private static FacePage page(View view, String mark) {
        return SeeFaces.of(
                        view,
                        view.facts().of(Part.class).named(mark).orElseThrow().id())
                .orElseThrow();
    }

    private byte[] pdf(View view, FaceInSight seen) {
        Moment printed = Moment.of(Instant.parse("2026-12-18T09:00:00Z"), view.zone());
        return new FaceSheetPaper(texts, measures)
                .apply(WriteFaceSheet.facts(view, seen, "Marrowgate Racing", printed)
                        .orElseThrow())
                .bytes();
    }

    private PdfText read(View view, FaceInSight seen) {
        byte[] pdf = pdf(view, seen);
        keep(seen, pdf);
        return PdfText.of(pdf);
    }

    /** Kept beside the pictures for people. */
    private static void keep(FaceInSight seen, byte[] pdf) {
        try {
            Path folder = Files.createDirectories(Path.of("target", "pictures"));
            Files.write(
                    folder.resolve("face-"
                            + (seen.look() == null ? "none" : seen.look().text()) + ".pdf"),
                    pdf);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void readings_zones_skims_and_how_it_lies_stand_on_the_page() throws IOException {
        View view = SampleViews.opening();
        FacePage head = page(view, "HD-06");
        FaceInSight may = new FaceInSight(
                head.part().id(),
                head.looks().stream()
                        .filter(look -> look.look().fact().method() == FaceMethod.PLATE_AND_DIAL
                                && look.look().fact().at().day().toString().equals("2026-05-29"))
                        .findFirst()
                        .orElseThrow()
                        .look()
                        .id(),
                null);
        PdfText text = read(view, may);
        assertThat(text.allEmbedded()).isTrue();
        assertThat(text.solid())
                .contains(
                        solid("Face of head HD-06"),
                        solid("Head HD-06, seen from the face: 0.08 mm low between 2 and 3, exhaust side"),
                        solid("exhaust side"),
                        solid("inlet side"),
                        solid("chain end"),
                        solid("bore 1"),
                        solid("bore 4"),
                        solid("Straight on, not mirrored; the block seen from above is its mirror"),
                        solid("0.05 + 0.03 + 0.02"),
                        solid("The low place was between 0.08 mm and 0.10 mm deep"),
                        solid("0.08 to 0.10 deep"),
                        solid("Corners before 117.92, 117.93, 117.92, 117.93 mm"),
                        solid("11.74 to 11.86"),
                        solid("Crack tests and hardness are for qualified inspectors."))
                .doesNotContain("\uFFFD");
        List<String> low = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("sample-season", "face-points.csv"))) {
            String[] cells = line.split(",", -1);
            if (cells[1].equals(may.look() == null ? "" : may.look().text())) {
                low.add(cells[2] + "|" + cells[3] + "|" + cells[4]);
            }
        }
        assertThat(low).hasSize(7);
        for (String each : low) {
            String[] cells = each.split("\\|");
            assertThat(text.solid()).contains(cells[2].equals("0") ? "0.00" : cells[2]);
        }
    }

    /** The figures of a map stand where they were read: seen from the face the exhaust edge of this head lies below. */
    @Test
    void each_figure_of_the_map_stands_at_its_place() throws IOException {
        View view = SampleViews.opening();
        FacePage head = page(view, "HD-06");
        FaceInSight may = FaceInSight.of(head);
        try (PDDocument document = Loader.loadPDF(pdf(view, may))) {
            List<TextPosition> letters = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String string, List<TextPosition> positions) {
                    letters.addAll(positions);
                }
            };
            stripper.setStartPage(1);
            stripper.setEndPage(1);
            stripper.getText(document);
            double deep = middle(letters, "−0.08");
            double left = middle(letters, "−0.02");
            assertThat(deep - left)
                    .as("206 mm and 65 mm from the front end")
                    .isCloseTo((206 - 65) * POINTS_FOR_ONE_MM, org.assertj.core.data.Offset.offset(4.0));
        }
    }

    private static double middle(List<TextPosition> letters, String figure) {
        StringBuilder all = new StringBuilder();
        letters.forEach(letter -> all.append(letter.getUnicode()));
        int at = all.indexOf(figure);
        assertThat(at).as(figure).isNotNegative();
        TextPosition first = letters.get(at);
        TextPosition last = letters.get(at + figure.length() - 1);
        return (first.getXDirAdj() + last.getXDirAdj() + last.getWidthDirAdj()) / 2;
    }

    @ParameterizedTest
    @CsvSource({"BL-06", "HG-06a", "HD-03", "HD-07"})
    void every_face_can_be_printed_looked_at_or_not(String mark) {
        View view = SampleViews.opening();
        Optional<FacePage> found =
                view.facts().of(Part.class).named(mark).flatMap(part -> SeeFaces.of(view, part.id()));
        if (found.isPresent()) {
            assertThat(read(view, FaceInSight.of(found.get())).solid()).contains(mark);
        }
    }

    @Test
    void a_zone_that_came_back_is_told_with_what_it_was_before() {
        View view = SampleViews.end();
        FacePage head = page(view, "HD-06");
        var october = head.looks().stream()
                .filter(look -> look.look().fact().at().day().toString().equals("2026-10-26")
                        && !look.low().isEmpty())
                .findFirst()
                .orElseThrow();
        PdfText text = read(
                view,
                new FaceInSight(
                        head.part().id(),
                        october.look().id(),
                        head.behind(october).orElseThrow().look().id()));
        assertThat(text.solid())
                .contains(
                        solid("0.03 mm low between 2 and 3, exhaust side: coming back."),
                        solid("It was 0.08 mm low before the skim"),
                        solid("low, coming back"),
                        solid("low on Fri 29 May 2026"),
                        solid("then −0.08"));
    }

    @Test
    void the_same_face_on_the_same_day_gives_the_same_bytes_and_one_ink() throws IOException {
        View view = SampleViews.opening();
        FaceInSight seen = FaceInSight.of(page(view, "HD-06"));
        byte[] pdf = pdf(view, seen);
        assertThat(pdf(view, seen)).isEqualTo(pdf);
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
