package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.outcome.Outcome;
import witnessmark.sample.SampleBooks;

/** The sample season that the program opens on is read whole, and written back as it is shipped. */
class SampleSeasonTest {
    private static final Path SAMPLE = Path.of(System.getProperty("project.basedir"), "sample-season");

    private final CsvSeasonFolders folders = Folders.unsynced();

    @TempDir
    Path place;

    @Test
    void it_reads_with_no_problem_and_is_written_back_byte_for_byte() {
        Facts facts = apply(SAMPLE, Facts.none());
        folders.write(facts, SampleBooks.kept(SAMPLE), place.resolve("again")).orThrow();
        SortedMap<String, String> shipped = Folders.texts(SAMPLE);
        shipped.keySet().removeIf(name -> !name.endsWith(".csv") && !name.equals(SeasonIndex.FILE));
        assertThat(Folders.texts(place.resolve("again"))).isEqualTo(shipped);
    }

    @Test
    void its_chapters_read_in_order_with_no_problem_and_the_season_they_make_comes_back_equal() throws IOException {
        Facts facts = apply(SAMPLE, Facts.none());
        for (Path chapter : chapters()) {
            facts = apply(chapter, facts);
            assertThat(folders.read(chapter, facts))
                    .as("%s read again", chapter)
                    .isEqualTo(Outcome.worked(List.of()));
        }
        folders.write(facts, place.resolve("season")).orThrow();
        Outcome<List<Entry<?>>> read = folders.read(place.resolve("season"), Facts.none());
        assertThat(read.problems()).isEmpty();
        assertThat(contents(Facts.none().with(read.orThrow()))).isEqualTo(contents(facts));
    }

    @Test
    void each_chapter_is_written_as_the_program_writes_its_rows() throws IOException {
        Facts facts = apply(SAMPLE, Facts.none());
        for (Path chapter : chapters()) {
            facts = apply(chapter, facts);
            folders.write(facts, place.resolve(chapter.getFileName())).orThrow();
            SortedMap<String, String> whole = Folders.texts(place.resolve(chapter.getFileName()));
            Folders.texts(chapter).forEach((file, text) -> {
                if (file.endsWith(".csv")) {
                    assertThat(whole.get(file).lines())
                            .as("%s %s", chapter, file)
                            .containsAll(text.lines().toList());
                }
            });
        }
    }

    private Facts apply(Path folder, Facts known) {
        Outcome<List<Entry<?>>> read = folders.read(folder, known);
        assertThat(read.problems()).as("%s", folder).isEmpty();
        assertThat(read.orThrow()).as("%s", folder).isNotEmpty();
        return known.with(read.orThrow());
    }

    private static List<Path> chapters() throws IOException {
        try (Stream<Path> later = Files.list(SAMPLE.resolve("later"))) {
            List<Path> chapters = later.filter(Files::isDirectory).sorted().toList();
            assertThat(chapters).hasSize(7);
            return chapters;
        }
    }

    /** Facts without the number of times each was written. */
    private static List<Object> contents(Facts facts) {
        return Folders.entries(facts).stream()
                .<Object>map(entry ->
                        List.of(entry.id(), entry.fact(), entry.standing(), String.valueOf(entry.struckBecause())))
                .toList();
    }
}
