package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** A folder is written whole or not at all, and never over what somebody else put there. */
class WritingTest {
    private static final Facts ONE_CAR = car("41");

    /** Kept, so that the log stays quiet about the disks that fail here on purpose. */
    private static final Logger LOG = Logger.getLogger(FolderWriter.class.getName());

    private final CsvSeasonFolders folders = Folders.unsynced();

    @TempDir
    Path place;

    @BeforeAll
    static void quiet() {
        LOG.setLevel(Level.OFF);
    }

    @AfterAll
    static void loud() {
        LOG.setLevel(null);
    }

    /** The kernel makes up /proc and gives it no size at all, so it has no free space either, and is not full. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void a_place_where_nothing_can_be_written_is_not_said_to_be_full() {
        Path pretended = Path.of("/proc/witness-mark-season");
        assertThat(folders.write(Facts.none(), pretended).problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.CANNOT_WRITE);
    }

    @Test
    void a_file_in_the_place_of_the_folder_is_said_to_be_there_and_stays() throws IOException {
        Path file = Files.writeString(place.resolve("notes.txt"), "plugs clean");
        assertThat(folders.write(Facts.none(), file))
                .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, file.toString())));
        assertThat(file).hasContent("plugs clean");
    }

    @Test
    void an_empty_logbook_is_a_folder_with_an_index_only() throws IOException {
        Path folder = place.resolve("empty");
        assertThat(folders.write(Facts.none(), folder)).isEqualTo(Outcome.worked(0));
        assertThat(Folders.texts(folder)).containsOnlyKeys("season.json").containsValue("""
                {
                  "format": "witness-mark season folder",
                  "version": 1,
                  "rows": {}
                }
                """);
        assertThat(folders.read(folder, Facts.none())).isEqualTo(Outcome.worked(List.of()));
    }

    @Test
    void the_disk_is_waited_for_and_nothing_else_is_left_beside_the_folder() throws IOException {
        Path folder = place.resolve("not/there/yet");
        assertThat(new CsvSeasonFolders().write(ONE_CAR, folder)).isEqualTo(Outcome.worked(1));
        assertThat(new CsvSeasonFolders().write(ONE_CAR, folder)).isEqualTo(Outcome.worked(1));
        assertThat(names(folder.getParent())).containsExactly("yet");
        assertThat(names(folder)).containsExactly("cars.csv", "season.json");
    }

    @Test
    void everything_is_waited_for_before_it_is_put_in_place() {
        List<String> done = new ArrayList<>();
        Disk noting = new UnsyncedDisk() {
            @Override
            public void sync(Path path) {
                done.add("sync " + path.getFileName());
            }

            @Override
            public void rename(Path from, Path to) throws IOException {
                done.add("rename to " + to.getFileName());
                super.rename(from, to);
            }
        };
        new CsvSeasonFolders(() -> null, noting)
                .write(ONE_CAR, place.resolve("season"))
                .orThrow();
        assertThat(done).hasSize(5);
        assertThat(done.get(2)).startsWith("sync .season-");
        assertThat(done)
                .containsExactly(
                        "sync cars.csv",
                        "sync season.json",
                        done.get(2),
                        "rename to season",
                        "sync " + place.getFileName());
    }

    @ParameterizedTest
    @ValueSource(strings = {"readme.txt", "stranger.csv", ".hidden", "later/x.csv", "runs.csv/x"})
    void a_folder_with_something_else_in_it_is_left_as_it_is(String other) throws IOException {
        Path folder = place.resolve("season");
        folders.write(ONE_CAR, folder).orThrow();
        Files.createDirectories(folder.resolve(other).getParent());
        Files.writeString(folder.resolve(other), "somebody's");
        SortedMap<String, String> before = Folders.texts(folder);
        assertThat(folders.write(car("57"), folder))
                .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.FOLDER_NOT_EMPTY, folder.toString())));
        assertThat(Folders.texts(folder)).isEqualTo(before);
        assertThat(Files.readString(folder.resolve(other))).isEqualTo("somebody's");
    }

    @Test
    void tables_made_by_hand_are_not_ours_to_replace() {
        Path folder = SeasonText.empty().text("cars.csv", "name,note\n41,\n").in(place.resolve("typed"));
        assertThat(folders.write(ONE_CAR, folder).problems())
                .containsExactly(Problem.of(ProblemKind.FOLDER_NOT_EMPTY, folder.toString()));
        SeasonText listed = SeasonText.small().text("season.json", "{}");
        Path broken = listed.in(place.resolve("broken"));
        assertThat(folders.write(ONE_CAR, broken).problems())
                .containsExactly(Problem.of(ProblemKind.FOLDER_NOT_EMPTY, broken.toString()));
        SeasonText oneMore = SeasonText.small().replace("season.json", "\"limits.csv\": 1", "\"works.csv\": 1");
        Path typed =
                oneMore.replace("season.json", "    \"works.csv\": 1,\n", "").in(place.resolve("one more"));
        assertThat(folders.write(ONE_CAR, typed).problems())
                .containsExactly(Problem.of(ProblemKind.FOLDER_NOT_EMPTY, typed.toString()));
    }

    @Test
    void an_empty_folder_or_one_written_before_is_replaced() throws IOException {
        Path folder = Files.createDirectory(place.resolve("season"));
        folders.write(ONE_CAR, folder).orThrow();
        folders.write(Facts.none(), folder).orThrow();
        assertThat(names(folder)).containsExactly("season.json");
        assertThat(names(place)).containsExactly("season");
    }

    @Test
    void a_table_somebody_changed_is_not_written_over() throws IOException {
        Path folder = place.resolve("season");
        folders.write(ONE_CAR, folder).orThrow();
        Path cars = folder.resolve("cars.csv");
        String typed = Files.readString(cars).replace("41", "42");
        Files.writeString(cars, typed);
        assertThat(folders.write(ONE_CAR, folder).problems())
                .containsExactly(Problem.of(ProblemKind.FOLDER_CHANGED, folder.toString(), "cars.csv"));
        assertThat(Files.readString(cars)).isEqualTo(typed);
    }

    @Test
    void a_file_of_that_name_stays() throws IOException {
        Path file = Files.writeString(place.resolve("season"), "mine");
        assertThat(folders.write(ONE_CAR, file).didWork()).isFalse();
        assertThat(Files.readString(file)).isEqualTo("mine");
    }

    @Test
    void a_place_that_cannot_be_written_to_is_named() throws IOException {
        Path file = Files.writeString(place.resolve("file"), "mine");
        Path folder = file.resolve("season");
        Outcome<Integer> written = folders.write(ONE_CAR, folder);
        assertThat(written.problems()).extracting(Problem::kind).containsExactly(ProblemKind.CANNOT_WRITE);
        assertThat(written.problems().get(0).facts().get(0)).isEqualTo(folder.toString());
    }

    @Test
    void half_a_character_is_not_written_as_something_else() throws IOException {
        Path folder = place.resolve("season");
        assertThat(folders.write(car("41 \uD83D"), folder))
                .isEqualTo(Outcome.didNot(
                        Problem.of(ProblemKind.CANNOT_WRITE, folder.toString(), "half a character in a text")));
        assertThat(names(place)).isEmpty();
    }

    /** Each call in turn, once and for ever: at the place there is the old folder or the new one, whole. */
    @ParameterizedTest(name = "for ever: {0}")
    @ValueSource(booleans = {false, true})
    void whatever_call_fails_there_is_the_old_folder_or_the_new_one(boolean forEver) throws IOException {
        FailingDisk healthy = new FailingDisk(Integer.MAX_VALUE, false, "");
        Path old = place.resolve("old");
        new CsvSeasonFolders(() -> null, healthy).write(ONE_CAR, old).orThrow();
        SortedMap<String, String> before = Folders.texts(old);
        new CsvSeasonFolders(() -> null, healthy).write(car("57"), old).orThrow();
        SortedMap<String, String> after = Folders.texts(old);
        int calls = healthy.calls();
        int failed = 0;
        for (int k = 1; k <= calls; k++) {
            Path folder = place.resolve("k" + k + "/season");
            folders.write(ONE_CAR, folder).orThrow();
            Outcome<Integer> written = new CsvSeasonFolders(() -> null, new FailingDisk(k, forEver, "the disk is gone"))
                    .write(car("57"), folder);
            SortedMap<String, String> now = Files.exists(folder) ? Folders.texts(folder) : movedAside(folder);
            // a disk that fails for ever cannot put back what it could not finish
            assertThat(now).as("call %d", k).isIn(before, after);
            assertThat(now.equals(after)).as("call %d", k).isIn(written.didWork(), forEver);
            if (!written.didWork()) {
                failed++;
                assertThat(written.problems())
                        .containsExactly(Problem.of(ProblemKind.CANNOT_WRITE, folder.toString(), "the disk is gone"));
            }
            if (!forEver && !written.didWork()) {
                assertThat(names(folder.getParent())).as("call %d", k).containsExactly("season");
            }
        }
        assertThat(failed).isGreaterThan(8);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "No space left on device",
                "season/.x: No space left on device",
                "There is not enough space on the disk",
                "Disk quota exceeded",
            })
    void a_full_disk_is_called_full(String said) {
        Path folder = place.resolve("season");
        CsvSeasonFolders full = new CsvSeasonFolders(() -> null, new FailingDisk(3, true, said));
        assertThat(full.write(ONE_CAR, folder))
                .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.DISK_FULL, folder.toString())));
        assertThat(Files.exists(folder)).isFalse();
    }

    @Test
    void new_files_are_private_to_the_user_where_the_disk_can_say_so() throws IOException {
        Path folder = place.resolve("season");
        folders.write(ONE_CAR, folder).orThrow();
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            assertThat(Files.getPosixFilePermissions(folder)).isEqualTo(PosixFilePermissions.fromString("rwx------"));
        }
    }

    /** When even putting back fails, the folder lies beside its place under a name of its own. */
    private static SortedMap<String, String> movedAside(Path folder) throws IOException {
        for (String name : names(folder.getParent())) {
            SortedMap<String, String> texts = Folders.texts(folder.resolveSibling(name));
            if (texts.getOrDefault("cars.csv", "").contains(",41,")) {
                return texts;
            }
        }
        throw new AssertionError("lost");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private static Facts car(String name) {
        return Facts.none()
                .with(List.of(
                        new Entry<>(Id.<Car>parse(Folders.id(1)), new Car(name, ""), Standing.IN_FORCE, null, 1)));
    }
}
