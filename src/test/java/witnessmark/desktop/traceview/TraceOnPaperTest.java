package witnessmark.desktop.traceview;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.Desk;
import witnessmark.logbook.tracing.SeeTrace;
import witnessmark.report.Pdf;
import witnessmark.report.TraceSheet;
import witnessmark.report.TraceSheetPdf;
import witnessmark.wording.Texts;

/** What is in sight of a trace on paper, read back by another library (PDFBox); the race of the sample with its over-rev. */
@UiTest
class TraceOnPaperTest {
    @TempDir
    private static Path folder;

    private static Desk desk;

    @BeforeAll
    static void read() {
        desk = TraceWindow.book(folder);
    }

    @AfterAll
    static void end() {
        desk.logbook().close();
    }

    private static String text(Pdf pdf) throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf.bytes())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(read).replace('\u2009', ' ').replace('\u00a0', ' ');
        }
    }

    /** To be looked at. */
    private static void keep(String name, Pdf pdf) throws IOException {
        Path folder = Files.createDirectories(Path.of(System.getProperty("project.build.directory"), "pictures"));
        Files.write(folder.resolve(name), pdf.bytes());
    }

    @Test
    void the_stretch_in_sight_is_printed_with_its_marks_and_figures() throws IOException {
        try (TraceWindow window = new TraceWindow(desk, Looks.light(), Texts.in(Locale.UK))) {
            window.open(SeeTrace.all(desk.view()).get(0).trace().id());
            window.root(1366, 768);
            TracePanel panel = window.page.panel();
            panel.view().closeTo(panel.side().markTable().shown().get(0).mark());
            window.page.print();
            window.tasks.awaitIdle();

            TraceSheet sheet = window.printed.get(0);
            assertThat(sheet.name()).isEqualTo("2026-05-03_41_race1");
            // 0.42 s from 18:47.42 on, with four seconds before and after: eight seconds and a half
            assertThat(sheet.until() - sheet.from()).isBetween(8.3, 8.6);
            Pdf pdf = new TraceSheetPdf(Texts.in(Locale.UK)).of(sheet);
            keep("trace.pdf", pdf);
            String said = text(pdf);
            assertThat(said)
                    .contains("Trace of K03")
                    .contains("mechanical over-rev at 18:47.4, 9 340 rpm for 0.42 s")
                    .contains("From 18:43.4 to 18:51.8 of 29:06.0")
                    .contains("engine speed, rpm", "oil pressure, bar", "water temperature")
                    .contains("limit 8 500 rpm")
                    .contains("Marks in this stretch", "Figures of this stretch")
                    .contains("engine speed, rpm 5 803 9 340 7 061")
                    .contains("nothing here says that an engine may run");
            assertThat(pdf.pages()).isEqualTo(1);
            assertThat(new TraceSheetPdf(Texts.in(Locale.UK)).of(sheet).bytes())
                    .as("the same sheet gives the same bytes")
                    .isEqualTo(pdf.bytes());
        }
    }

    @Test
    void the_whole_of_it_and_what_is_laid_over_it_say_so() throws IOException {
        try (TraceWindow window = new TraceWindow(desk, Looks.light(), Texts.in(Locale.UK))) {
            window.open(SeeTrace.all(desk.view()).get(0).trace().id());
            window.root(1366, 768);
            window.page.layOver(SeeTrace.all(desk.view()).get(1).trace().id());
            window.tasks.awaitIdle();
            window.page.print();
            window.tasks.awaitIdle();

            Pdf pdf = new TraceSheetPdf(Texts.in(Locale.UK)).of(window.printed.get(0));
            keep("trace-whole.pdf", pdf);
            assertThat(text(pdf)).contains("The whole of it, 29:06.0").contains("second colour K05, Run 3");
        }
    }

    @Test
    void with_no_trace_shown_it_says_what_to_do() {
        try (TraceWindow window = new TraceWindow(desk, Looks.light(), Texts.in(Locale.UK))) {
            window.page.print();
            window.tasks.awaitIdle();
            assertThat(window.printed).isEmpty();
        }
    }
}
