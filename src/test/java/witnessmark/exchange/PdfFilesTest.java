package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.logbook.port.Paper;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** At the place of a PDF there is the one before or the whole new one, and nothing beside it. */
class PdfFilesTest {
    @TempDir
    private Path folder;

    private final PdfFiles files = new PdfFiles(new UnsyncedDisk());

    private static Paper paper(String words) {
        return new Paper(("%PDF-1.5\n" + words + "\n(Witness Mark)\n").getBytes(StandardCharsets.ISO_8859_1), 2);
    }

    private List<String> there() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> String.valueOf(file.getFileName())).sorted().toList();
        }
    }

    @Test
    void pages_are_written_over_older_ones() throws IOException {
        Path file = folder.resolve("jobs.pdf");

        assertThat(files.write(paper("first"), file)).isEqualTo(Outcome.worked(2));
        assertThat(files.write(paper("second"), file)).isEqualTo(Outcome.worked(2));

        assertThat(Files.readString(file)).contains("second").doesNotContain("first");
        assertThat(there()).containsExactly("jobs.pdf");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void a_disk_that_fails_once_leaves_the_older_ones_and_nothing_beside_them(int step) throws IOException {
        Path file = folder.resolve("jobs.pdf");
        files.write(paper("first"), file).orThrow();

        Outcome<Integer> written =
                new PdfFiles(new FailingDisk(step, false, "No space left on device")).write(paper("second"), file);

        assertThat(written).isEqualTo(Outcome.didNot(Problem.of(ProblemKind.DISK_FULL, file.toString())));
        assertThat(Files.readString(file)).contains("first");
        assertThat(there()).containsExactly("jobs.pdf");
    }

    @Test
    void what_somebody_else_keeps_there_stays() throws IOException {
        for (String theirs : List.of("what we must not forget", "%PDF-1.7 a rule book", "")) {
            Path file = Files.writeString(folder.resolve("theirs.pdf"), theirs);

            assertThat(files.write(paper("ours"), file))
                    .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, file.toString())));

            assertThat(file).hasContent(theirs);
        }
    }

    @Test
    void a_folder_of_that_name_stays() throws IOException {
        Path file = Files.createDirectory(folder.resolve("jobs.pdf"));

        assertThat(files.write(paper("ours"), file))
                .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, file.toString())));

        assertThat(file).isEmptyDirectory();
    }

    @Test
    void a_folder_that_is_not_there_is_said_not_to_be_and_not_made() {
        Path file = folder.resolve("gone").resolve("jobs.pdf");

        assertThat(files.write(paper("ours"), file).problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.CANNOT_WRITE);

        assertThat(folder).isEmptyDirectory();
    }

    /** The kernel lets nobody make a file in /proc, whoever is asking. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void a_place_where_nothing_can_be_written_is_said_to_be_one() {
        assertThat(files.write(paper("ours"), Path.of("/proc/witness-mark-jobs.pdf"))
                        .problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.CANNOT_WRITE);
    }
}
