package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.report.PdfText;

/** What is written for others: a case without names, tags for bags. */
class SharingTest {
    @TempDir
    private Path folder;

    private Shell shell;
    private String book;

    @BeforeEach
    void make() {
        shell = new Shell(folder);
        book = shell.sampleBook();
    }

    private String text(Path file) throws IOException {
        return PdfText.of(Files.readAllBytes(file)).solid();
    }

    @Test
    void a_case_is_written_without_words_unless_they_are_asked_for() throws IOException {
        Path file = folder.resolve("case.pdf");
        Shell.Ran ran = shell.run("case", book, "INC-03", "--print", file.toString());
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("case.pdf");
        assertThat(text(file)).contains(PdfText.solid("Case INC-03")).doesNotContain(PdfText.solid("copper-coloured"));

        Path worded = folder.resolve("worded.pdf");
        shell.run("case", book, "INC-03", "--print", worded.toString(), "--with-words", "--without-photos");
        assertThat(text(worded)).contains(PdfText.solid("copper-coloured"));
        assertThat(shell.run("case", book, "INC-99", "--print", file.toString()).code())
                .isEqualTo(1);
    }

    @Test
    void tags_are_written_for_an_engine() throws IOException {
        Path file = folder.resolve("tags.pdf");
        Shell.Ran ran = shell.run("tags", book, "K05", "--print", file.toString(), "--json");
        assertThat(new ObjectMapper().readTree(ran.out()).path("pages").asInt()).isPositive();
        assertThat(text(file)).contains(PdfText.solid("Which way round"));
        assertThat(shell.run("tags", book, "K99", "--print", file.toString()).code())
                .isEqualTo(1);
    }
}
