package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Facts;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.store.TestLogbooks;

/**
 * A program killed in the midst of whatever it is at: writing, correcting, importing, signing, backing up, bringing an
 * older logbook to the newest form. What it said was saved is there, what it was at is there whole or not at all, and
 * the logbook opens to be written, asks nothing and is whole.
 */
class KilledAtWorkTest {
    /**
     * A program takes its time to start. What a kill leaves is what {@link PowerCut#KEPT} leaves, so that those of {@link
     * PowerLossTest} make it far more than a hundred in every build.
     */
    private static final int KILLS = Numbers.of("kills", 36, 2_000);

    private static final int LONGEST_MILLIS = 200;
    private static final int LONGEST_MIGRATION_MILLIS = 1_500;
    /** So many kills one logbook sees before another is begun, so that it stays small. */
    private static final int OF_ONE = 12;

    @TempDir(factory = InMemory.class)
    Path folder;

    private final Map<String, Integer> counts = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();

    @Test
    void nothing_said_to_be_saved_is_lost_and_nothing_is_half_there() throws Exception {
        Random random = Numbers.random("kills");
        TestLogbooks logbooks = null;
        SaidSoFar said = new SaidSoFar();
        for (int kill = 0; kill < KILLS; kill++) {
            if (logbooks == null || kill % OF_ONE == 0) {
                logbooks = new TestLogbooks(Files.createDirectories(folder.resolve("logbook-" + kill)));
                int form = 7 + kill / OF_ONE % 5;
                Files.write(logbooks.file(), OldFormsTest.kept(form));
                said = asKept(form);
            }
            boolean migrating = kill % OF_ONE == 0;
            int millis = random.nextInt(migrating ? LONGEST_MIGRATION_MILLIS : LONGEST_MILLIS);
            List<String> lines = killedAfter(logbooks, random.nextLong(), migrating ? "opens" : "saved", millis);
            lines.forEach(said::take);
            lines.forEach(line -> counts.merge(line.split(" ")[0], 1, Integer::sum));
            said = compared(logbooks, said, "kill " + kill);
        }
        counts.put("kills", KILLS);
        Numbers.tell("R1 killed at work", counts);
        assertThat(wrong).as("seed %d", Numbers.seed()).isEmpty();
        assertThat(counts.get("saved")).isGreaterThan(KILLS / 2);
    }

    /** The test itself is tested: a logbook as it was before a change that was said to be saved. */
    @Test
    void a_change_that_was_said_to_be_saved_and_is_not_there_would_be_noticed() throws Exception {
        TestLogbooks logbooks = new TestLogbooks(folder);
        Files.write(logbooks.file(), OldFormsTest.kept(12));
        SaidSoFar said = asKept(12);
        said.take("begins 00000000-0000-7000-8000-000000000000:1");
        said.take("saved 00000000-0000-7000-8000-000000000000:1");
        compared(logbooks, said, "planted");
        assertThat(wrong)
                .containsExactly(
                        "planted: lost of what was saved: 1, as 00000000-0000-7000-8000-000000000000:1, found null");
    }

    private SaidSoFar asKept(int form) throws IOException {
        TestLogbooks before = new TestLogbooks(Files.createDirectories(folder.resolve("form-" + form)));
        Files.write(before.file(), OldFormsTest.kept(form));
        try (Logbook logbook = before.open()) {
            return SaidSoFar.startingWith(records(logbook.facts()), "");
        }
    }

    private SaidSoFar compared(TestLogbooks logbooks, SaidSoFar said, String when) {
        Outcome<Logbook> opened = logbooks.files.open(logbooks.file());
        if (!opened.didWork() || !opened.problems().isEmpty()) {
            wrong.add(when + ": does not open as it should: " + opened.problems());
        }
        try (Logbook logbook = opened.orThrow()) {
            Map<String, Long> found = records(logbook.facts());
            String draft = logbook.drafts()
                    .find("run", "")
                    .map(kept -> kept.fields().get("text"))
                    .orElse("");
            String fault = said.wrongIn(found, draft);
            if (!fault.isEmpty()) {
                wrong.add(when + ": " + fault);
            }
            if (!logbook.verify().isEmpty()) {
                wrong.add(when + ": " + logbook.verify());
            }
            for (String backup : said.backups()) {
                if (!Files.exists(Path.of(backup))) {
                    counts.merge("backups thinned out since", 1, Integer::sum);
                }
            }
            return SaidSoFar.startingWith(found, draft);
        }
    }

    private static Map<String, Long> records(Facts facts) {
        Map<String, Long> records = new HashMap<>();
        Truth.entries(facts).values().forEach(entry -> records.put(entry.id().text(), entry.rev()));
        return records;
    }

    /** What a program said that was killed so long after it first said this. */
    private static List<String> killedAfter(TestLogbooks logbooks, long seed, String first, int millis)
            throws Exception {
        Path errors = logbooks.folder.resolve("errors.txt");
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "-cp",
                        System.getProperty("java.class.path"),
                        BusyProgram.class.getName(),
                        logbooks.folder.toString(),
                        Long.toString(seed))
                .redirectError(errors.toFile())
                .start();
        List<String> said = new ArrayList<>();
        try (BufferedReader out = program.inputReader()) {
            String line = "";
            while (!line.startsWith(first)) {
                line = out.readLine();
                assertThat(line).as("%s", Files.readString(errors)).isNotNull();
                said.add(line);
            }
            LockSupport.parkNanos(millis * 1_000_000L);
            program.toHandle().destroyForcibly(); // the handle leaves what was said to be read
            program.waitFor();
            StringWriter rest = new StringWriter();
            out.transferTo(rest);
            said.addAll(wholeLines(rest.toString()));
        }
        return said;
    }

    /** What was cut short in the midst of a line was not said: of a revision 12 a 1 may be left, which reads like one. */
    private static List<String> wholeLines(String text) {
        return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
    }
}
