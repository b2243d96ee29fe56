package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.logbook.port.Logbook;

/** A logbook where nothing can be written is read, says so, refuses every write with a sentence and stays as it is. */
@DisabledOnOs(OS.WINDOWS)
class ReadOnlyPlaceTest {
    private static final String TAB_LINE = "except\tPLACE_READ_ONLY\t";

    @TempDir
    private Path folder;

    private Path place;
    private Path file;

    @BeforeEach
    void make() throws IOException {
        place = Files.createDirectories(folder.resolve("place"));
        file = place.resolve("team.witness");
        TestLogbooks logbooks = new TestLogbooks(folder.resolve("home"));
        try (Logbook logbook = logbooks.files.create(file).orThrow()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
        }
    }

    @AfterEach
    void unlock() throws IOException {
        permissions(place, "rwx------");
    }

    @Test
    void a_file_or_a_folder_that_may_only_be_read() throws Exception {
        try (Child child = Child.start(folder.resolve("data"), "laptop", Bounds.permissions())) {
            permissions(file, "r--r--r--");
            readsAndRefuses(child);
            permissions(place, "r-xr-xr-x");
            readsAndRefuses(child);
            permissions(file, "rw-------");
            readsAndRefuses(child);
        }
    }

    @Test
    void a_file_that_may_not_even_be_read() throws Exception {
        permissions(file, "---------");
        try (Child child = Child.start(folder.resolve("data"), "laptop", Bounds.permissions())) {
            assertThat(child.ask("open " + file)).startsWith("did not\tCANNOT_READ_FILE\tCouldn't read " + file);
        }
        assertThat(place.resolve("team.witness.lock")).doesNotExist();
    }

    @Test
    void what_a_killed_program_had_saved_is_read_there_too() throws Exception {
        try (Child killed = Child.start(folder.resolve("data"), "other")) {
            assertThat(killed.ask("open " + file)).isEqualTo("worked");
            assertThat(killed.ask("car 8")).isEqualTo("worked");
            killed.kill();
        }
        assertThat(place.resolve("team.witness-wal")).isNotEmptyFile();
        try (Stream<Path> all = Files.list(place)) {
            for (Path each : all.toList()) {
                permissions(each, "r--r--r--");
            }
        }
        permissions(place, "r-xr-xr-x");
        FolderState before = FolderState.of(place);

        try (Child child = Child.start(folder.resolve("data"), "laptop", Bounds.permissions())) {
            assertThat(child.ask("open " + file)).startsWith(TAB_LINE);
            assertThat(child.ask("cars")).isEqualTo("7,8");
            assertThat(child.ask("verify")).isEqualTo("worked");
            assertThat(child.ask("close")).isEqualTo("worked");
        }
        assertThat(FolderState.of(place)).isEqualTo(before);
    }

    @Test
    void a_disk_mounted_to_be_read_alone() throws Exception {
        Path disk = Files.createDirectories(folder.resolve("disk"));
        Path there = disk.resolve("team.witness");
        try (Child child = Child.start(folder.resolve("data"), "laptop", Bounds.ownDisks())) {
            assertThat(child.ask("shell mount -t tmpfs -o size=4m tmpfs " + disk))
                    .isEqualTo("status 0");
            assertThat(child.ask("create " + there)).isEqualTo("worked");
            assertThat(child.ask("car 7")).isEqualTo("worked");
            assertThat(child.ask("close")).isEqualTo("worked");
            assertThat(child.ask("shell mount -o remount,ro " + disk)).isEqualTo("status 0");
            assertThat(child.ask("open " + there)).startsWith(TAB_LINE + "'" + there + "'");
            assertThat(child.ask("cars")).isEqualTo("7");
            assertThat(child.ask("car 8")).startsWith("did not\tOPEN_READ_ONLY\t");
            assertThat(child.ask("verify")).isEqualTo("worked");
            assertThat(child.ask("shell test \"$(ls " + disk + ")\" = team.witness"))
                    .isEqualTo("status 0");
        }
    }

    private void readsAndRefuses(Child child) throws Exception {
        FolderState before = FolderState.of(place);
        assertThat(child.ask("open " + file))
                .isEqualTo(
                        TAB_LINE + "'" + file + "' lies where nothing can be written. It is open for reading only, and"
                                + " it stays as it is. Copy it to a folder of your own to write in it.");
        assertThat(child.ask("cars")).isEqualTo("7");
        assertThat(child.ask("car 8"))
                .isEqualTo("did not\tOPEN_READ_ONLY\tThe logbook is open for reading only. Nothing is saved."
                        + " Close it where else it is open, or copy it to where it can be written to; then open it"
                        + " again.");
        assertThat(child.ask("cars")).isEqualTo("7");
        assertThat(child.ask("keep half a run")).isEqualTo("IN_FALLBACK_FILE");
        assertThat(child.ask("draft")).isEqualTo("half a run");
        assertThat(child.ask("backup")).isEqualTo("worked");
        assertThat(child.ask("verify")).isEqualTo("worked");
        assertThat(child.ask("close")).isEqualTo("worked");
        assertThat(FolderState.of(place)).isEqualTo(before);
    }

    private static void permissions(Path path, String text) throws IOException {
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(text));
    }
}
