package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.domain.Trace;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/** Bytes kept beside records go out as files named by their SHA-256 (FIPS 180-4), and come back only if they are that. */
class KeptBesideTest {
    private final CsvSeasonFolders folders = Folders.unsynced();

    @TempDir
    Path place;

    @ParameterizedTest
    @ValueSource(ints = {1, 1_000, (1 << 18) - 1, 1 << 18, 3_000_000})
    void they_go_out_and_come_back_to_the_last_byte(int size) throws Exception {
        byte[] bytes = bytes(size, 3);
        Path folder = place.resolve("season");
        String name = written(folder, bytes);
        assertThat(name)
                .isEqualTo(HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        assertThat(Files.readAllBytes(folder.resolve("kept").resolve(name))).isEqualTo(bytes);
        assertThat(Files.readString(folder.resolve("season.json")))
                .contains("\"kept\": {\n    \"" + name + "\": " + size + "\n  }");
        SeasonFolders.Beside found = folders.beside(folder, Set.of(name));
        assertThat(found.whole()).singleElement().satisfies(kept -> {
            assertThat(kept.sha256()).isEqualTo(name);
            assertThat(kept.bytes()).isEqualTo(bytes);
        });
        assertThat(folders.read(folder, Facts.none()).problems())
                .extracting(Problem::kind)
                .doesNotContain(ProblemKind.FILE_UNKNOWN, ProblemKind.COLUMN_UNKNOWN);
    }

    @Test
    void only_what_a_record_names_goes_out_and_a_season_without_has_no_folder_for_it() throws IOException {
        Kept other = Kept.of(bytes(100, 9));
        Path folder = place.resolve("season");
        folders.write(traces(null, ""), sha256 -> Outcome.worked(Optional.of(other)), folder)
                .orThrow();
        assertThat(names(folder)).containsExactly("season.json", "traces.csv");
    }

    @Test
    void what_cannot_be_read_from_the_logbook_is_told_and_the_rest_is_written() throws IOException {
        Kept good = Kept.of(bytes(50, 1));
        Problem changed = Problem.of(ProblemKind.SAMPLES_CHANGED, "race.csv");
        Path folder = place.resolve("season");
        Outcome<Integer> written = folders.write(
                traces(good.sha256(), "0".repeat(64)),
                sha256 -> sha256.equals(good.sha256()) ? Outcome.worked(Optional.of(good)) : Outcome.didNot(changed),
                folder);
        assertThat(written.orThrow()).isEqualTo(2);
        assertThat(written.problems()).containsExactly(changed);
        assertThat(names(folder.resolve("kept"))).containsExactly(good.sha256());
    }

    @ParameterizedTest
    @ValueSource(strings = {"gone", "one byte other", "longer", "empty", "too large", "a folder", "no folder"})
    void what_is_missing_or_something_else_is_not_taken(String fault) throws IOException {
        Path folder = place.resolve("season");
        String name = written(folder, bytes(5_000, 4));
        Path file = folder.resolve("kept").resolve(name);
        spoil(file, fault);
        SeasonFolders.Beside found = folders.beside(folder, Set.of(name));
        assertThat(found.whole()).isEmpty();
        boolean gone = fault.equals("gone") || fault.equals("no folder");
        assertThat(gone ? found.missing() : found.others()).containsExactly(name);
        assertThat(gone ? found.others() : found.missing()).isEmpty();
    }

    private static void spoil(Path file, String fault) throws IOException {
        byte[] own = Files.readAllBytes(file);
        Files.delete(file);
        switch (fault) {
            case "gone" -> {}
            case "one byte other" -> {
                own[2_345] ^= 1;
                Files.write(file, own);
            }
            case "longer" -> {
                Files.write(file, own);
                Files.write(file, new byte[] {0}, java.nio.file.StandardOpenOption.APPEND);
            }
            case "empty" -> Files.createFile(file);
            case "too large" -> {
                try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
                    sparse.setLength(Kept.MOST + 1L);
                }
            }
            case "a folder" -> Files.createDirectory(file);
            case "no folder" -> Files.delete(file.getParent());
            default -> throw new AssertionError(fault);
        }
    }

    /** A folder somebody sent may point anywhere on the disk of whoever reads it. */
    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void links_are_not_followed_not_even_to_the_right_bytes() throws IOException {
        byte[] bytes = bytes(700, 6);
        Path folder = place.resolve("season");
        String name = written(folder, bytes);
        Path file = folder.resolve("kept").resolve(name);
        Path elsewhere = Files.write(place.resolve("elsewhere"), bytes);
        Files.delete(file);
        Files.createSymbolicLink(file, elsewhere);
        assertThat(folders.beside(folder, Set.of(name)).others()).containsExactly(name);

        Path real = Files.createDirectory(place.resolve("real"));
        Files.write(real.resolve(name), bytes);
        Files.delete(file);
        Files.delete(file.getParent());
        Files.createSymbolicLink(file.getParent(), real);
        assertThat(folders.beside(folder, Set.of(name)).others()).containsExactly(name);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../season.json",
                "..",
                "/etc/passwd",
                "",
                "CON",
                "0123",
                "ABCDEF0123456789ABCDEF0123456789ABCDEF0123456789ABCDEF0123456789",
            })
    void a_name_that_is_no_digest_is_never_looked_for(String name) throws IOException {
        Path folder = place.resolve("season");
        written(folder, bytes(10, 1));
        assertThat(folders.beside(folder, Set.of(name)).missing()).containsExactly(name);
    }

    @Test
    void a_folder_written_before_is_replaced_with_what_is_kept_and_other_files_in_it_are_left_alone()
            throws IOException {
        Path folder = place.resolve("season");
        String first = written(folder, bytes(10, 1));
        String second = written(folder, bytes(20, 2));
        assertThat(names(folder.resolve("kept"))).containsExactly(second).doesNotContain(first);

        Files.writeString(folder.resolve("kept").resolve("notes.txt"), "mine");
        assertThat(tryWriting(folder, bytes(30, 3)).problems())
                .containsExactly(Problem.of(ProblemKind.FOLDER_NOT_EMPTY, folder.toString()));
        Files.delete(folder.resolve("kept").resolve("notes.txt"));
        Files.write(folder.resolve("kept").resolve(second), bytes(20, 7));
        assertThat(tryWriting(folder, bytes(30, 3)).problems())
                .containsExactly(Problem.of(ProblemKind.FOLDER_CHANGED, folder.toString(), "kept/" + second));
        assertThat(names(place)).containsExactly("season");
    }

    /** As in {@link WritingTest}: each call of the disk in turn. */
    @Test
    void whatever_call_fails_there_is_the_old_folder_or_the_new_one() throws IOException {
        FailingDisk healthy = new FailingDisk(Integer.MAX_VALUE, false, "");
        Path once = place.resolve("once");
        write(new CsvSeasonFolders(() -> null, healthy), once, bytes(10, 1));
        Map<String, String> before = all(once);
        int made = healthy.calls();
        write(new CsvSeasonFolders(() -> null, healthy), once, bytes(20, 2));
        Map<String, String> after = all(once);
        int failed = 0;
        for (int k = 1; k <= healthy.calls() - made; k++) {
            Path folder = place.resolve("k" + k + "/season");
            write(folders, folder, bytes(10, 1)).orThrow();
            Outcome<Integer> written = write(
                    new CsvSeasonFolders(() -> null, new FailingDisk(k, false, "the disk is gone")),
                    folder,
                    bytes(20, 2));
            assertThat(all(folder)).as("call %d", k).isEqualTo(written.didWork() ? after : before);
            if (!written.didWork()) {
                failed++;
                assertThat(names(folder.getParent())).as("call %d", k).containsExactly("season");
            }
        }
        assertThat(failed).isGreaterThan(10);
    }

    /** Any seasons of any traces: what is there comes back, what is not is missing, and nothing else is. */
    @Test
    void any_season_comes_back_with_what_was_there() {
        long seed = Long.getLong("seed", 20_261_129L);
        System.out.println("kept beside: seed " + seed);
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 40; round++) {
            Map<String, Kept> there = new HashMap<>();
            List<String> named = new ArrayList<>();
            for (int i = random.nextInt(6); i >= 0; i--) {
                Kept kept = Kept.of(bytes(1 + random.nextInt(2_000), random.nextInt(4)));
                named.add(kept.sha256());
                if (random.nextInt(3) > 0) {
                    there.put(kept.sha256(), kept);
                }
            }
            Path folder = place.resolve("round" + round);
            folders.write(
                            traces(named.toArray(String[]::new)),
                            sha256 -> Outcome.worked(Optional.ofNullable(there.get(sha256))),
                            folder)
                    .orThrow();
            SeasonFolders.Beside found = folders.beside(folder, Set.copyOf(named));
            Map<String, byte[]> back = found.whole().stream().collect(Collectors.toMap(Kept::sha256, Kept::bytes));
            assertThat(back.keySet()).as("seed %d round %d", seed, round).isEqualTo(there.keySet());
            back.forEach(
                    (name, bytes) -> assertThat(bytes).isEqualTo(there.get(name).bytes()));
            assertThat(found.missing())
                    .isEqualTo(named.stream()
                            .filter(name -> !there.containsKey(name))
                            .collect(Collectors.toSet()));
            assertThat(found.others()).isEmpty();
        }
    }

    private String written(Path folder, byte[] bytes) {
        tryWriting(folder, bytes).orThrow();
        return Kept.of(bytes).sha256();
    }

    private Outcome<Integer> tryWriting(Path folder, byte[] bytes) {
        return write(folders, folder, bytes);
    }

    private static Outcome<Integer> write(CsvSeasonFolders folders, Path folder, byte[] bytes) {
        Kept kept = Kept.at(Kept.of(bytes).sha256(), bytes.length, () -> new ByteArrayInputStream(bytes));
        return folders.write(traces(kept.sha256()), sha256 -> Outcome.worked(Optional.of(kept)), folder);
    }

    private static Facts traces(String... kept) {
        List<Entry<?>> entries = new ArrayList<>();
        for (int i = 0; i < kept.length; i++) {
            Trace trace = new Trace(
                    new Id<>(UUID.fromString(Folders.id(900))),
                    "race.csv",
                    "1".repeat(64),
                    "2".repeat(64),
                    10,
                    null,
                    new RunningTime(1_000),
                    20,
                    "form",
                    "",
                    new RunningTime(1_000),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    "",
                    "",
                    kept[i] == null || kept[i].isEmpty() ? null : kept[i],
                    "Ada",
                    "");
            entries.add(new Entry<>(new Id<>(UUID.fromString(Folders.id(i + 1))), trace, Standing.IN_FORCE, null, 1));
        }
        return Facts.none().with(entries);
    }

    private static byte[] bytes(int size, long seed) {
        byte[] bytes = new byte[size];
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < size; i++) {
            bytes[i] = (byte) random.nextInt();
        }
        return bytes;
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private static Map<String, String> all(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>(Folders.texts(folder));
        for (String name : names(folder.resolve("kept"))) {
            texts.put(
                    name,
                    HexFormat.of()
                            .formatHex(Files.readAllBytes(folder.resolve("kept").resolve(name))));
        }
        return texts;
    }
}
