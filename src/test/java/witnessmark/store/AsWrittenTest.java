package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Problem;

/** A whole logbook is proven in one reading, and while somebody writes nothing is taken for changed. */
class AsWrittenTest {
    private static final int WRITINGS = 200;

    @TempDir
    private Path folder;

    /** So that no longer reading is needed where nothing is wrong; {@link TamperingTest} shows that nothing is missed. */
    @Test
    void a_logbook_of_every_kind_written_again_and_again_leaves_no_doubt() throws SQLException {
        TestLogbooks logbooks = new TestLogbooks(folder);
        RandomFacts random = new RandomFacts(5);
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, random.oneOfEach(logbook.facts())).orThrow();
            for (int i = 0; i < WRITINGS; i++) {
                TestLogbooks.write(logbook, List.of(random.edited(random.any(logbook.facts()), logbook.facts())));
            }
            assertThat(logbook.history()).hasSizeGreaterThan(WRITINGS);
            try (Database database = new Connections(new Sql()).reader(logbooks.file())) {
                AsWritten.Doubts doubts = AsWritten.in(database);
                assertThat(doubts.tables()).isEmpty();
                assertThat(doubts.history()).isFalse();
            }
        }
    }

    @Test
    void what_is_written_during_a_check_is_no_fault() throws InterruptedException {
        TestLogbooks logbooks = new TestLogbooks(folder);
        RandomFacts random = new RandomFacts(6);
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, random.oneOfEach(logbook.facts())).orThrow();
            Entry<?> one = logbook.facts().of(Run.class).all().get(0);
            AtomicBoolean done = new AtomicBoolean();
            Thread writing = new Thread(() -> {
                for (int i = 0; i < WRITINGS; i++) {
                    Entry<?> now = Entries.find(logbook.facts(), one).orElseThrow();
                    TestLogbooks.write(logbook, List.of(random.edited(now, logbook.facts())));
                }
                done.set(true);
            });
            writing.start();
            List<Problem> found = new ArrayList<>();
            while (!done.get()) {
                found.addAll(logbook.verify());
            }
            writing.join();
            assertThat(found).isEmpty();
            assertThat(logbook.verify()).isEmpty();
        }
    }
}
