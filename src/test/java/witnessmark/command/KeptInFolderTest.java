package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The samples of traces go with a season folder from one logbook to another, and nothing else goes for them. */
class KeptInFolderTest {
    private static final int TRACES = 6;

    @TempDir
    Path place;

    private Shell shell;
    private Path season;
    private String other;

    @BeforeEach
    void writeOut() throws IOException {
        shell = new Shell(place);
        String book = shell.sampleBook();
        season = shell.path("season");
        assertThat(shell.run("export", book, season.toString()).code()).isZero();
        other = shell.path("other.witness").toString();
        shell.run("new", other);
    }

    @Test
    void they_come_along_and_go_out_again() throws IOException {
        Shell.Ran ran = shell.run("import", other, season.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("6 traces with the samples behind the curves.");
        assertThat(shell.run("verify", other).code()).isZero();
        assertThat(kept(exported("again"))).hasSize(TRACES).isEqualTo(kept(season));
    }

    @Test
    void records_come_without_them_when_they_are_missing_and_a_later_reading_brings_them() throws IOException {
        Map<String, String> all = kept(season);
        delete(season.resolve("kept"));
        Shell.Ran ran = shell.run("import", other, season.toString());
        assertThat(ran.code()).isEqualTo(Exit.WORKED_EXCEPT);
        assertThat(ran.err()).contains("traces.csv", "The samples of 6 traces are not in the folder.");
        assertThat(shell.run("verify", other).code()).isZero();
        assertThat(exported("without").resolve("kept")).doesNotExist();

        Files.createDirectory(season.resolve("kept"));
        for (Map.Entry<String, String> file : all.entrySet()) {
            Files.write(
                    season.resolve("kept").resolve(file.getKey()),
                    HexFormat.of().parseHex(file.getValue()));
        }
        Shell.Ran again = shell.run("import", other, season.toString());
        assertThat(again.code()).as(again.err()).isZero();
        assertThat(again.out()).contains("Nothing new from", "6 traces with the samples behind the curves.");
        assertThat(kept(exported("again"))).isEqualTo(all);
        JsonNode third = new ObjectMapper()
                .readTree(
                        shell.run("import", other, season.toString(), "--json").out());
        assertThat(third.get("traces").asInt()).as("they are there").isZero();
    }

    @Test
    void one_that_is_not_what_its_name_says_is_told_and_stays_out() throws IOException {
        String name = kept(season).keySet().iterator().next();
        Path file = season.resolve("kept").resolve(name);
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 4;
        Files.write(file, bytes);
        Shell.Ran ran = shell.run("import", other, season.toString());
        assertThat(ran.code()).isEqualTo(Exit.WORKED_EXCEPT);
        assertThat(ran.err()).contains("kept/" + name, "This file is not what was written there.");
        assertThat(kept(exported("again"))).hasSize(TRACES - 1).doesNotContainKey(name);
        assertThat(Files.readString(exported("once more").resolve("traces.csv")))
                .contains(name);

        assertThat(shell.run("import", other, season.toString()).err())
                .as("told again, since somebody may have copied it anew")
                .contains("kept/" + name);
    }

    private Path exported(String to) {
        Path out = shell.path(to);
        assertThat(shell.run("export", other, out.toString()).code()).isZero();
        return out;
    }

    private static Map<String, String> kept(Path folder) throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder.resolve("kept"))) {
            for (Path file : files.toList()) {
                all.put(file.getFileName().toString(), HexFormat.of().formatHex(Files.readAllBytes(file)));
            }
        }
        return all;
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> deepest = all.sorted(Comparator.reverseOrder()).toList();
            for (Path path : deepest) {
                Files.delete(path);
            }
        }
    }
}
