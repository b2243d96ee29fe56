package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.store.FolderState;
import witnessmark.store.Sentences;
import witnessmark.store.TestLogbooks;

/**
 * Things under the name of a logbook that are none, or no whole one: texts, noise, zeros, archives, databases of others,
 * logbooks cut short or with a strange head. Each is called what it is in a whole sentence, and stays to the byte as it
 * was, with nothing made beside it.
 */
class NoLogbookTest {
    private static final int PAGE = 4_096;

    @TempDir(factory = InMemory.class)
    Path folder;

    @Test
    void whatever_is_no_logbook_is_refused_in_a_sentence_and_stays_as_it_is() throws Exception {
        Random random = Numbers.random("no logbook");
        byte[] whole = WholeLogbook.in(folder.resolve("whole"), Numbers.seed()).bytes;
        Map<String, byte[]> things = new LinkedHashMap<>();
        texts(things);
        noise(things, random);
        zeros(things, whole);
        cutShort(things, whole, random);
        headsOfOthers(things, whole);
        databases(things);
        TestLogbooks logbooks = new TestLogbooks(Files.createDirectories(folder.resolve("home")));
        Path place = Files.createDirectories(folder.resolve("place"));
        Map<ProblemKind, Integer> counts = new TreeMap<>();
        List<String> wrong = new ArrayList<>();
        for (Map.Entry<String, byte[]> thing : things.entrySet()) {
            Path file = Files.write(place.resolve(thing.getKey() + ".witness"), thing.getValue());
            FolderState before = FolderState.of(place);
            Outcome<Logbook> opened = logbooks.files.open(file);
            if (opened.didWork()) {
                opened.orThrow().close();
                wrong.add(thing.getKey() + " was opened");
            }
            Sentences.complete(opened.problems());
            opened.problems().stream().map(Problem::kind).forEach(kind -> counts.merge(kind, 1, Integer::sum));
            if (!FolderState.of(place).equals(before)) {
                wrong.add(thing.getKey() + " was touched");
            }
            Files.delete(file);
        }
        Numbers.tell("R8 no logbooks, " + things.size(), counts);
        assertThat(wrong).as("seed %d", Numbers.seed()).isEmpty();
        assertThat(things).hasSizeGreaterThanOrEqualTo(60);
        assertThat(counts.keySet())
                .as("an unknown form of the file of SQLite itself can only be called unreadable")
                .isSubsetOf(
                        ProblemKind.NOT_A_LOGBOOK,
                        ProblemKind.LOGBOOK_DAMAGED,
                        ProblemKind.LOGBOOK_ALTERED,
                        ProblemKind.CANNOT_READ_FILE);
    }

    private static void texts(Map<String, byte[]> things) throws IOException {
        for (String text : List.of(
                "S",
                "Springs at 12 h.\n",
                "<html><body>Run sheet</body></html>",
                "{\"run\": 1}",
                "SQLite format 3",
                "SQLite format 3\0",
                "SQLite format 2\0 and more",
                "PK\u0003\u0004",
                "%PDF-1.7\n",
                "a;b;c\n".repeat(9_999))) {
            things.put("text " + things.size(), text.getBytes(StandardCharsets.ISO_8859_1));
            things.put("UTF-16 text " + things.size(), text.getBytes(StandardCharsets.UTF_16));
        }
        ByteArrayOutputStream zipped = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(zipped)) {
            zip.write(new byte[PAGE]);
        }
        things.put("an archive", zipped.toByteArray());
    }

    private static void noise(Map<String, byte[]> things, Random random) {
        for (int length : new int[] {1, 15, 16, 99, 100, 101, 512, PAGE, 3 * PAGE + 7, 1 << 20}) {
            byte[] noise = new byte[length];
            random.nextBytes(noise);
            things.put("noise of " + length, noise);
            byte[] underOurHead = noise.clone();
            byte[] magic = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
            System.arraycopy(magic, 0, underOurHead, 0, Math.min(magic.length, length));
            things.put("noise of " + length + " under a head", underOurHead);
        }
    }

    private static void zeros(Map<String, byte[]> things, byte[] whole) {
        for (int length : new int[] {1, 100, PAGE, 10 * PAGE}) {
            things.put(length + " zeros", new byte[length]);
        }
        byte[] firstPage = whole.clone();
        Arrays.fill(firstPage, 100, PAGE, (byte) 0);
        things.put("a first page of zeros", firstPage);
        byte[] afterFirst = whole.clone();
        Arrays.fill(afterFirst, PAGE, whole.length, (byte) 0);
        things.put("zeros after the first page", afterFirst);
    }

    private static void cutShort(Map<String, byte[]> things, byte[] whole, Random random) {
        for (int i = 0; i < 10; i++) {
            int length = 1 + random.nextInt(whole.length - 1);
            things.put("cut to " + length, Arrays.copyOf(whole, length));
        }
    }

    /** A logbook's file whose head says it is something else. */
    private static void headsOfOthers(Map<String, byte[]> things, byte[] whole) {
        int[][] heads = {{0, 's'}, {6, 'X'}, {16, 0x20}, {17, 3}, {19, 7}, {21, 65}, {47, 9}, {68, 0}, {71, 0}};
        for (int[] head : heads) {
            byte[] other = whole.clone();
            other[head[0]] = (byte) head[1];
            things.put("byte " + head[0] + " of the head", other);
        }
    }

    private void databases(Map<String, byte[]> things) throws IOException, SQLException {
        for (int application : new int[] {0, 1, 0x47504B47, 0x5749544D}) {
            for (int page : new int[] {512, 4_096, 65_536}) {
                Path file = folder.resolve("database-" + application + "-" + page);
                try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                        Statement statement = connection.createStatement()) {
                    statement.executeUpdate("PRAGMA page_size = " + page);
                    statement.executeUpdate("CREATE TABLE run (id TEXT)");
                    statement.executeUpdate("PRAGMA application_id = " + application);
                    statement.executeUpdate("PRAGMA user_version = 12");
                }
                things.put("a database marked " + application + " of pages of " + page, Files.readAllBytes(file));
            }
        }
    }
}
