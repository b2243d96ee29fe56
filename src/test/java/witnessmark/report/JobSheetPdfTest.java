package witnessmark.report;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.ledger.result.MarkState;
import witnessmark.wording.Texts;

/** Job sheets read back by a library that did not write them (Apache PDFBox). */
class JobSheetPdfTest {
    private static final Instant MADE = Instant.parse("2026-07-08T18:00:00Z");

    private final Texts texts = Texts.in(Locale.UK);
    private final JobSheetPdf pdf = new JobSheetPdf(texts);

    private static JobSheet.Row row(String what) {
        return new JobSheet.Row(false, null, what, "", List.of(), List.of());
    }

    private static JobSheet.Section jobs(List<JobSheet.Row> rows) {
        return new JobSheet.Section("Jobs", "Waits for", "Who", rows);
    }

    private static JobSheet sheet(JobSheet.Section... sections) {
        return sheet(MADE, sections);
    }

    private static JobSheet sheet(Instant made, JobSheet.Section... sections) {
        return new JobSheet(
                "Job sheet, Round 6",
                "3 to be done before we load",
                List.of("Truck leaves Fri 24 Jul, 06:00."),
                "Marrowgate Racing",
                "As of Wed 8 Jul 2026",
                "Printed Wed 8 Jul 2026, 19:00",
                made,
                List.of(sections));
    }

    private PdfText read(JobSheet sheet) {
        return PdfText.of(pdf.of(sheet).bytes());
    }

    @Test
    void every_word_of_a_row_and_of_the_edges_can_be_read_back_and_the_typefaces_are_in_the_file() {
        JobSheet sheet = sheet(new JobSheet.Section(
                "Must be done before we go",
                "How it stands",
                "What is asked",
                List.of(new JobSheet.Row(
                        false,
                        new JobSheet.Mark(MarkState.HELD, "Held"),
                        "Rods RS-03",
                        "Engine K03, car 41",
                        List.of("Held, not signed clear", "9\u2009340 rpm on 3 May"),
                        List.of("over-rev", "crack test")))));

        PdfText read = read(sheet);

        assertThat(read.pages()).hasSize(1);
        assertThat(read.allEmbedded()).isTrue();
        assertThat(read.fonts()).isNotEmpty().allMatch(name -> name.contains("Roboto") || name.contains("B612"));
        assertThat(read.solid())
                .contains(solid("Job sheet, Round 6"), solid("3 to be done before we load"))
                .contains(solid("Truck leaves Fri 24 Jul, 06:00."), solid("Must be done before we go"))
                .contains(solid("How it stands"), solid("What is asked"), solid(texts.get("jobsheet.initials")))
                .contains("Held", solid("Rods RS-03"), solid("Engine K03, car 41"), solid("Held, not signed clear"))
                .contains(solid("9340 rpm on 3 May"), "over-rev", solid("crack test"))
                .contains(solid(texts.get("jobsheet.caution")), solid("Page 1 of 1"))
                .contains(solid("Marrowgate Racing"), solid("As of Wed 8 Jul 2026"), solid("Printed Wed 8 Jul 2026"));
    }

    @Test
    void two_hundred_jobs_go_on_for_several_pages_with_the_heading_on_each_and_nothing_lost() {
        List<JobSheet.Row> rows = IntStream.rangeClosed(1, 200)
                .mapToObj(number -> row("Job number " + number + " of many"))
                .toList();
        Pdf laid = pdf.of(sheet(jobs(rows)));

        PdfText read = PdfText.of(laid.bytes());

        assertThat(read.pages()).hasSizeGreaterThan(4).hasSize(laid.pages());
        for (int page = 1; page <= laid.pages(); page++) {
            assertThat(solid(read.pages().get(page - 1)))
                    .contains("WaitsforWho", "Page" + page + "of" + laid.pages(), solid("Job sheet, Round 6"))
                    .contains(solid(texts.get("jobsheet.caution")));
        }
        String all = read.solid();
        for (JobSheet.Row row : rows) {
            String words = solid(row.what());
            assertThat(all.indexOf(words)).as(row.what()).isNotNegative().isEqualTo(all.lastIndexOf(words));
        }
    }

    /** However the rows fall, a heading stands over at least one of its rows. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void no_heading_is_left_alone_at_the_end_of_a_page_and_no_row_is_lost(long seed) {
        Random random = new Random(seed);
        List<JobSheet.Section> sections = new ArrayList<>();
        for (int at = 0; at < 25; at++) {
            String heading = "Heading" + at + "x";
            sections.add(new JobSheet.Section(
                    heading,
                    "",
                    "",
                    IntStream.range(0, 1 + random.nextInt(4))
                            .mapToObj(
                                    number -> row("Row" + heading + number + " " + "word ".repeat(random.nextInt(30))))
                            .toList()));
        }
        PdfText read = read(sheet(sections.toArray(JobSheet.Section[]::new)));
        for (JobSheet.Section section : sections) {
            for (String page : read.pages()) {
                boolean headed = page.contains("\n" + section.heading()) || page.startsWith(section.heading());
                assertThat(page.contains("Row" + section.heading()))
                        .as("seed %d, %s", seed, section.heading())
                        .isEqualTo(headed);
            }
            section.rows().forEach(row -> assertThat(read.solid()).contains(solid(row.what())));
        }
    }

    @Test
    void a_row_longer_than_a_page_goes_on_and_keeps_every_word() {
        String endless =
                IntStream.range(0, 900).mapToObj(number -> "w" + number).reduce("", (a, b) -> a + " " + b);

        PdfText read = read(sheet(jobs(List.of(row("before"), row(endless.strip()), row("after")))));

        assertThat(read.pages()).hasSizeGreaterThan(1);
        assertThat(read.solid()).contains("before", "w0w1", "after");
        IntStream.range(0, 900).forEach(number -> assertThat(read.solid()).contains("w" + number));
    }

    @Test
    void the_same_sheet_is_the_same_file_and_another_moment_is_another() {
        JobSheet.Section section = jobs(List.of(row("Valve springs"), row("Été – 3 · 4 × 5")));

        assertThat(pdf.of(sheet(section)).bytes())
                .isEqualTo(pdf.of(sheet(section)).bytes())
                .isNotEqualTo(pdf.of(sheet(MADE.plusSeconds(1), section)).bytes());
    }

    @Test
    void the_file_says_when_it_was_made_what_it_is_and_in_which_language() throws IOException {
        try (PDDocument document =
                Loader.loadPDF(pdf.of(sheet(jobs(List.of(row("a job"))))).bytes())) {
            Calendar made = document.getDocumentInformation().getCreationDate();
            assertThat(made.toInstant()).isEqualTo(MADE);
            assertThat(made.getTimeZone().getRawOffset())
                    .isEqualTo(TimeZone.getTimeZone("UTC").getRawOffset());
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Job sheet, Round 6");
            assertThat(document.getDocumentInformation().getCreator()).isEqualTo(SheetPages.MAKER);
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
            PDPage page = document.getPage(0);
            assertThat(page.getMediaBox().getWidth()).isEqualTo(595f); // A4, ISO 216: 210 mm by 297 mm
            assertThat(page.getMediaBox().getHeight()).isEqualTo(842f);
        }
    }

    @Test
    void letters_of_the_typeface_are_printed_and_any_other_leaves_a_mark_that_is_explained() {
        PdfText known = read(sheet(jobs(List.of(row("Été – Łódź · Ψ Ж 9\u202F340 × 2 °C … − \u00BD")))));
        assertThat(known.solid())
                .contains("Été–Łódź·ΨЖ9340×2°C…−\u00BD")
                .doesNotContain(String.valueOf(Lettering.MISSING))
                .doesNotContain(solid("has no type for"));

        PdfText other = read(sheet(jobs(List.of(row("ask \u6771\u4EAC and \uD83D\uDD27 first")))));
        assertThat(other.solid())
                .contains("ask\uFFFD\uFFFDand\uFFFDfirst")
                .contains(solid(texts.get("paper.unprintable", Lettering.MISSING)));
    }

    /** Unicode, annex 15: a letter and its accent apart are the letter with its accent. */
    @Test
    void an_accent_typed_apart_is_the_same_letter() {
        assertThat(read(sheet(jobs(List.of(row("e\u0301quipe"))))).solid()).contains("\u00E9quipe");
    }

    @Test
    void what_cannot_be_seen_is_a_space_and_a_line_typed_is_a_line() {
        assertThat(read(sheet(jobs(List.of(row("one\ttwo\u0007three\nfour")))))
                        .pages()
                        .get(0))
                .contains("one two three")
                .contains("\nfour");
    }

    @Test
    void a_title_in_letters_the_board_has_no_type_for_is_set_in_the_other_typeface() {
        JobSheet sheet = new JobSheet("Жуки", "3", List.of(), "", "", "", MADE, List.of());

        assertThat(read(sheet).solid()).contains("Жуки").doesNotContain(String.valueOf(Lettering.MISSING));
    }
}
