package witnessmark.logbook.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.exchange.DiskLoggerFiles;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.port.LoggerFiles;
import witnessmark.logbook.port.Settings;
import witnessmark.sample.SampleBooks;
import witnessmark.trace.Packs;

/** Files that appear, grow, vanish and come back in a folder at the track. */
class WatchedFolderTest {
    private static final String SPIKE = witnessmark.trace.LoggerFiles.spike();

    @TempDir
    Path folder;

    private final Map<String, String> remembered = new HashMap<>();
    private Desk desk;
    private Path stick;
    private WatchedFolder watched;
    private long clock;
    private int opened;

    @BeforeEach
    void open() throws IOException {
        desk = new SampleBooks(folder.resolve("books")).untraced();
        stick = Files.createDirectory(folder.resolve("stick"));
        watched = watched();
        watched.watch(stick);
    }

    private WatchedFolder watched() {
        LoggerFiles disk = new DiskLoggerFiles();
        return new WatchedFolder(
                desk,
                new Settings() {
                    @Override
                    public Optional<String> get(String key) {
                        return Optional.ofNullable(remembered.get(key));
                    }

                    @Override
                    public void put(String key, String value) {
                        remembered.put(key, value);
                    }
                },
                new LoggerFiles() {
                    @Override
                    public LoggerFile file(Path path) {
                        opened++;
                        return disk.file(path);
                    }

                    @Override
                    public List<Lying> in(Path from) throws IOException {
                        return disk.in(from);
                    }
                });
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private WatchedFolder.Look look() {
        clock += WatchedFolder.SETTLED;
        return watched.look(clock);
    }

    private List<String> waiting() {
        look();
        return look().waiting().stream().map(WatchedFolder.Waiting::name).toList();
    }

    private Path put(String name, String text) throws IOException {
        return Files.writeString(stick.resolve(name), text);
    }

    @Test
    void a_file_waits_once_it_has_not_changed_for_a_while() throws IOException {
        Path file = put("2026-05-23_57_p1.csv", SPIKE.substring(0, 100_000));
        assertThat(look().waiting()).as("just seen").isEmpty();
        Files.writeString(file, SPIKE.substring(100_000, 200_000), StandardOpenOption.APPEND);
        assertThat(look().waiting()).as("it grew").isEmpty();
        WatchedFolder.Look growing = watched.look(clock + 100);
        assertThat(growing.waiting()).as("too soon").isEmpty();
        assertThat(growing.growing()).isEqualTo(1);
        assertThat(waiting()).containsExactly("2026-05-23_57_p1.csv");
    }

    @Test
    void a_file_is_looked_into_once_and_not_again_while_it_stays_as_it_is() throws IOException {
        put("a.csv", SPIKE);
        waiting();
        int before = opened;
        for (int i = 0; i < 20; i++) {
            look();
        }
        assertThat(opened).isEqualTo(before);
    }

    @Test
    void what_is_no_trace_and_the_same_trace_again_do_not_wait() throws IOException {
        put("b.csv", SPIKE);
        put("a copy.csv", SPIKE);
        put("read me.txt", "Dear team\n");
        put("empty.csv", "");
        Files.write(stick.resolve("picture.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 0, 0, 1});
        Files.createDirectory(stick.resolve("older.csv"));
        assertThat(waiting()).containsExactly("a copy.csv");
        WatchedFolder.Look look = look();
        assertThat(look.growing()).isZero();
        assertThat(look.passed())
                .extracting(WatchedFolder.Passed::name, WatchedFolder.Passed::why)
                .containsExactly(
                        tuple("picture.png", WatchedFolder.Why.NO_TRACE),
                        tuple("read me.txt", WatchedFolder.Why.NO_TRACE),
                        tuple("empty.csv", WatchedFolder.Why.EMPTY),
                        tuple("b.csv", WatchedFolder.Why.SAME));
        assertThat(look.passed().get(3).about()).isEqualTo("a copy.csv");
        watched.setAside(look.waiting().get(0).content());
        assertThat(look().passed().stream()
                        .filter(file -> file.why() == WatchedFolder.Why.ASIDE)
                        .map(WatchedFolder.Passed::name))
                .containsExactly("a copy.csv", "b.csv");
    }

    @Test
    void what_was_brought_in_is_known_whatever_it_is_called_and_waits_again_when_that_is_taken_back()
            throws IOException {
        put("2026-05-23_57_p1.csv", SPIKE);
        assertThat(waiting()).hasSize(1);
        BringInTrace bringIn = new BringInTrace(desk, SampleBooks.ids());
        BroughtTrace trace = bringIn.read(
                        new DiskLoggerFiles().file(stick.resolve("2026-05-23_57_p1.csv")),
                        TraceAnswers.none(),
                        bringIn.settings("2026-05-23_57_p1.csv"),
                        true,
                        bytes -> true)
                .orThrow();
        TraceProposal proposal =
                bringIn.propose(trace, 0, bringIn.runs(trace, 0).get(0));
        bringIn.save(proposal, proposal.taken(), "", "trace").orThrow();

        Files.move(stick.resolve("2026-05-23_57_p1.csv"), stick.resolve("renamed.csv"));
        assertThat(waiting()).isEmpty();
        desk.undo().orThrow();
        assertThat(waiting()).containsExactly("renamed.csv");
    }

    @Test
    void what_was_set_aside_stays_so_for_the_next_start_and_under_another_name() throws IOException {
        put("a.csv", SPIKE);
        look();
        watched.setAside(look().waiting().get(0).content());
        assertThat(waiting()).isEmpty();
        watched = watched();
        Files.move(stick.resolve("a.csv"), stick.resolve("b.csv"));
        assertThat(waiting()).isEmpty();
    }

    @Test
    void a_stick_that_is_pulled_is_told_and_what_is_on_it_waits_when_it_is_back() throws IOException {
        put("a.csv", SPIKE);
        assertThat(waiting()).hasSize(1);
        Path away = Files.move(stick, folder.resolve("pulled"));
        assertThat(look().gone()).isNotNull();
        assertThat(look().waiting()).isEmpty();
        Files.move(away, stick);
        assertThat(waiting()).containsExactly("a.csv");
    }

    @Test
    void a_file_that_goes_waits_no_more() throws IOException {
        Path file = put("a.csv", SPIKE);
        assertThat(waiting()).hasSize(1);
        Files.delete(file);
        assertThat(look().waiting()).isEmpty();
    }

    @Test
    void without_a_folder_nothing_is_looked_at() throws IOException {
        put("a.csv", SPIKE);
        watched.watch(null);
        assertThat(watched.folder()).isEmpty();
        assertThat(waiting()).isEmpty();
        assertThat(opened).isZero();
    }

    @Test
    void an_archive_of_several_waits_too_and_is_asked_about_when_it_is_opened() throws IOException {
        Files.write(stick.resolve("day.zip"), twoInOne());
        assertThat(waiting()).containsExactly("day.zip");
    }

    private static byte[] twoInOne() {
        String some = SPIKE.substring(0, 20_000);
        return Packs.zip("a.csv", some, "b.csv", some);
    }
}
