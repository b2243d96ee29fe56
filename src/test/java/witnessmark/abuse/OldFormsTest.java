package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Facts;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;
import witnessmark.store.LogbookForm;
import witnessmark.store.TestLogbooks;

/**
 * Logbooks as the program wrote them when its files had an older form, kept with the lives that program worked out and
 * how many records of each kind there were. Opened today they say the same, and what they were is backed up first.
 *
 * <p>When a new form lands, a logbook of the one before is added: {@code form-N.witness.gz} beside {@code form-N.txt}.
 */
class OldFormsTest {
    @TempDir(factory = InMemory.class)
    Path folder;

    @ParameterizedTest(name = "form {0}")
    @ValueSource(ints = {7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void a_logbook_of_an_older_form_says_what_it_said_and_is_backed_up_first(int form) throws Exception {
        TestLogbooks logbooks = new TestLogbooks(folder);
        Files.write(logbooks.file(), kept(form));
        assertThat(LogbookForm.of(logbooks.file())).isEqualTo(form);

        try (Logbook logbook = logbooks.open()) {
            assertThat(logbook.readOnly()).isEmpty();
            assertThat(logbook.verify()).isEmpty();
            assertThat(said(logbook.facts())).containsAllEntriesOf(keptWords(form));
        }

        assertThat(LogbookForm.of(logbooks.file())).isEqualTo(LogbookForm.newest());
        try (Stream<Path> all = Files.walk(folder.resolve("data-device-a"))) {
            List<Path> backups = all.filter(file -> file.toString().endsWith(".witness"))
                    .sorted()
                    .toList();
            assertThat(LogbookForm.of(backups.get(0)))
                    .as("what it was is backed up first")
                    .isEqualTo(form);
        }
    }

    @Test
    void there_is_a_logbook_of_every_form_that_files_have_had() {
        assertThat(LogbookForm.known())
                .allSatisfy(form -> assertThat(kept(form)).isNotEmpty());
    }

    static byte[] kept(int form) throws IOException {
        try (InputStream in = new GZIPInputStream(resource("form-" + form + ".witness.gz"))) {
            return in.readAllBytes();
        }
    }

    /** What is counted and how much, as the program of that time said. */
    private static Map<String, String> keptWords(int form) throws IOException {
        Map<String, String> words = new TreeMap<>();
        try (InputStream in = resource("form-" + form + ".txt")) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()) {
                int values = line.startsWith("count") ? 1 : 4;
                List<String> parts = Arrays.asList(line.split(" "));
                int at = parts.size() - values;
                words.put(String.join(" ", parts.subList(0, at)), String.join(" ", parts.subList(at, parts.size())));
            }
        }
        return words;
    }

    private static Map<String, String> said(Facts facts) {
        Map<String, String> said = new TreeMap<>(Truth.lives(facts));
        RecordTypes.all()
                .forEach(type -> said.put(
                        "count " + type.name(),
                        Integer.toString(facts.of(type.kind()).all().size())));
        return said;
    }

    private static InputStream resource(String name) {
        return Objects.requireNonNull(OldFormsTest.class.getResourceAsStream("/abuse/" + name), name);
    }
}
