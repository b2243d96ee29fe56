package witnessmark.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Person;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Texts;

/** The logbook in the window is backed up while it changes, and only then. */
@UiTest
class WatchTest {
    @TempDir
    Path folder;

    private final List<Problem> found = new ArrayList<>();
    private final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    private int back;
    private Desk desk;
    private Watch watch;

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
        watch = new Watch(Texts.in(Locale.UK), tasks, desk, new Watch.Found() {
            @Override
            public void checked(List<Problem> problems) {
                found.addAll(problems);
            }

            @Override
            public void met(List<Problem> problems) {
                found.addAll(problems);
            }

            @Override
            public void back() {
                back++;
            }
        });
    }

    @AfterEach
    void close() {
        watch.close();
        tasks.awaitIdle();
        desk.logbook().close();
        tasks.close();
    }

    @Test
    void what_was_written_since_is_backed_up_once() throws IOException {
        long before = backups();
        watch.backUp();
        tasks.awaitIdle();
        assertThat(backups()).as("nothing written yet").isEqualTo(before);

        desk.write("adding", List.of(somebody())).orThrow();
        watch.backUp();
        tasks.awaitIdle();
        long once = backups();
        assertThat(once).isEqualTo(before + 1);

        watch.backUp();
        tasks.awaitIdle();
        assertThat(backups()).as("nothing written since").isEqualTo(once);
        assertThat(found).isEmpty();
    }

    @Test
    void a_file_that_goes_is_told_once_and_so_is_its_coming_back() throws IOException {
        tasks.awaitIdle(); // the check of the whole
        Path file = desk.logbook().path();
        Path away = file.resolveSibling("away.witness");
        Files.move(file, away);
        watch.lookForFile();
        tasks.awaitIdle();
        watch.lookForFile();
        tasks.awaitIdle();
        assertThat(found).extracting(Problem::kind).containsExactly(ProblemKind.FILE_MOVED_AWAY);
        assertThat(back).isZero();
        Files.move(away, file);
        watch.lookForFile();
        tasks.awaitIdle();
        assertThat(back).isEqualTo(1);
    }

    private static Entry<Person> somebody() {
        return new Entry<>(SampleBooks.ids().next(), new Person("Somebody new", ""), Standing.IN_FORCE, null, 1);
    }

    private long backups() throws IOException {
        Path kept = folder.resolve("data").resolve("backups");
        if (!Files.exists(kept)) {
            return 0;
        }
        try (Stream<Path> files = Files.walk(kept)) {
            return files.filter(Files::isRegularFile).count();
        }
    }
}
