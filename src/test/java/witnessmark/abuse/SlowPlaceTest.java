package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.abuse.DiskControl.Call;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Car;
import witnessmark.logbook.CopyElsewhere;
import witnessmark.logbook.port.Logbook;
import witnessmark.store.DataFolder;
import witnessmark.store.FileSettings;
import witnessmark.store.Garage;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;
import witnessmark.store.TestLogbooks;

/**
 * The shipped program closed while the second place takes its time. The window says what it waits for and lets leave at
 * once; what was half copied is taken for no copy, the older ones are whole, and the next opening makes up for it.
 */
@UiTest
class SlowPlaceTest {
    /** Each piece of 64 kB, so that a copy would take minutes. */
    private static final int SLOW_MILLIS = 6_000;
    /** A liveness limit: ten times what it takes on a slow machine. */
    private static final int LONGEST_SECONDS = 60;

    @TempDir
    Path folder;

    private DiskLibrary library;
    private Path data;
    private Path stick;
    private Path control;

    @BeforeEach
    void make() throws Exception {
        library = DiskLibrary.builtIn(folder);
        data = folder.resolve("data");
        stick = Files.createDirectories(folder.resolve("stick"));
        control = Files.write(folder.resolve("control"), new byte[DiskControl.LENGTH]);
        try (Logbook logbook =
                files(Clock.systemUTC()).create(folder.resolve("team.witness")).orThrow()) {
            elsewhere(logbook).choose(stick).orThrow();
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
        }
        settings().put("logbook.last", folder.resolve("team.witness").toString());
    }

    @Test
    void leaving_does_not_wait_for_a_slow_place_and_nothing_half_copied_is_taken_for_a_copy() throws Exception {
        new DiskControl(control).slow(Call.WRITE.bit() | Call.SYNC.bit(), SLOW_MILLIS);
        Process program = started();
        try {
            assertThat(program.inputReader().readLine())
                    .as("%s", Files.readString(folder.resolve("errors")))
                    .isEqualTo("told");
            assertThat(program.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS))
                    .as("it leaves at once")
                    .isTrue();
            assertThat(program.exitValue()).isZero();
        } finally {
            program.destroyForcibly();
        }
        assertThat(endingIn(".witness")).hasSize(1);
        assertThat(endingIn(".witness.new")).as("it was in the midst of it").hasSize(1);
        made_up_for_by_the_next_opening();
    }

    private void made_up_for_by_the_next_opening() throws IOException {
        InstantSource later = InstantSource.offset(Clock.systemUTC(), Duration.ofHours(2));
        SqliteLogbookFiles files = files(later);
        try (Logbook logbook = files.open(folder.resolve("team.witness")).orThrow()) {
            assertThat(logbook.verify()).isEmpty();
            CopyElsewhere.Look look = elsewhere(logbook).bring();
            assertThat(look.problems()).isEmpty();
            assertThat(look.onlyHereSince()).isNull();
        }
        assertThat(endingIn(".witness"))
                .hasSize(2)
                .allSatisfy(copy -> assertThat(files.copies().check(copy)).isEmpty());
        assertThat(endingIn(".new")).as("what was cut short is swept away").isEmpty();
    }

    @Test
    void where_the_place_is_quick_the_last_copy_is_made_before_the_program_ends() throws Exception {
        Process program = started();
        try {
            assertThat(program.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)).isTrue();
            assertThat(program.exitValue()).isZero();
        } finally {
            program.destroyForcibly();
        }
        try (Logbook logbook =
                files(Clock.systemUTC()).open(folder.resolve("team.witness")).orThrow()) {
            assertThat(endingIn(".witness")).hasSize(2);
            assertThat(elsewhere(logbook).bring().onlyHereSince()).isNull();
        }
    }

    private Process started() throws IOException {
        ProcessBuilder program = library.program(
                LeavingProgram.class,
                List.of(),
                Map.of(
                        "DISK_FOLDER", stick.toString(),
                        "DISK_CONTROL", control.toString(),
                        "JAVA_TOOL_OPTIONS", "-Dwitnessmark.data=" + data));
        return program.redirectError(folder.resolve("errors").toFile()).start();
    }

    private SqliteLogbookFiles files(InstantSource clock) {
        return new SqliteLogbookFiles(data, clock::millis, this::device, new Holder("bench", "Ada"));
    }

    private String device() {
        try {
            return new DataFolder(data).device();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private FileSettings settings() {
        return new DataFolder(data).settings();
    }

    private CopyElsewhere elsewhere(Logbook logbook) {
        return new CopyElsewhere(logbook, settings(), Instant::now);
    }

    private List<Path> endingIn(String ending) throws IOException {
        try (Stream<Path> all = Files.walk(stick)) {
            return all.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }
}
