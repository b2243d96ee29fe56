package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Outcome;

/**
 * Thousands of spoilt folders. None may stop the program, and none may be called read when something in it was not.
 * The rows that should have come are counted by {@link Grid}, which shares nothing with the reader.
 */
class MutationTest {
    private static final int MUTANTS_PER_SEED = 150;

    private final CsvSeasonFolders folders = Folders.unsynced();

    @TempDir
    Path place;

    static LongStream seeds() {
        return LongStream.range(0, 12);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_spoilt_folder_is_never_called_read_when_something_of_it_was_not(long seed) {
        Random random = new Random(seed);
        ReusedFolder folder = new ReusedFolder(place);
        for (int i = 0; i < MUTANTS_PER_SEED; i++) {
            SeasonText season = SeasonText.small();
            List<String> done = new ArrayList<>();
            for (int times = 1 + random.nextInt(3); times > 0; times--) {
                spoil(season, random, done);
            }
            Outcome<List<Entry<?>>> read = folders.read(folder.show(season), Facts.none());
            if (read.problems().isEmpty()) {
                assertThat((long) read.orThrow().size())
                        .as("mutant %d: %s", i, done)
                        .isEqualTo(rows(season))
                        .isGreaterThanOrEqualTo(ReadingTest.SMALL_SEASON_ROWS);
            } else {
                assertThat(read.problems()).as("mutant %d: %s", i, done).allMatch(problem -> problem.stops());
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_folder_rewritten_with_the_same_meaning_reads_the_same(long seed) {
        Random random = new Random(seed);
        List<Entry<?>> asItWas = folders.read(SeasonText.small().in(place.resolve("small")), Facts.none())
                .orThrow();
        Set<Mutation> rewriting = EnumSet.allOf(Mutation.class);
        rewriting.removeIf(mutation -> !mutation.keepsMeaning());
        SeasonText season = SeasonText.small();
        List<String> done = new ArrayList<>();
        for (Mutation mutation : rewriting) {
            String file = table(season, random);
            done.add(mutation + " " + file);
            mutation.apply(season, file, random);
        }
        Outcome<List<Entry<?>>> read = folders.read(season.in(place.resolve("rewritten")), Facts.none());
        assertThat(read).as("%s", done).isEqualTo(Outcome.worked(asItWas));
    }

    @Test
    void a_random_file_in_the_place_of_a_table_is_never_more_than_a_problem() {
        Random random = new Random(7);
        ReusedFolder folder = new ReusedFolder(place);
        for (int i = 0; i < 200; i++) {
            byte[] noise = new byte[random.nextInt(3_000)];
            random.nextBytes(noise);
            if (i % 2 == 0) {
                for (int j = 0; j < noise.length; j++) {
                    noise[j] = (byte) ",\"\n\r a1-/é".charAt(random.nextInt(10));
                }
            }
            SeasonText season = SeasonText.small().bytes("runs.csv", noise);
            assertThat(folders.read(folder.show(season), Facts.none()).problems())
                    .as("noise %d", i)
                    .isNotEmpty();
        }
    }

    private static void spoil(SeasonText season, Random random, List<String> done) {
        Mutation[] all = Mutation.values();
        Mutation mutation = all[random.nextInt(all.length)];
        String file = random.nextInt(12) == 0 && season.files().containsKey("season.json")
                ? "season.json"
                : table(season, random);
        byte[] bytes = season.files().get(file);
        if (bytes.length > 0 && isText(bytes) && Grid.parse(season.text(file)).isRegular()) {
            mutation.apply(season, file, random);
            done.add(mutation + " " + file);
        }
    }

    private static String table(SeasonText season, Random random) {
        List<String> tables = season.files().keySet().stream()
                .filter(file -> file.endsWith(".csv"))
                .toList();
        return tables.get(random.nextInt(tables.size()));
    }

    private static boolean isText(byte[] bytes) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    private static long rows(SeasonText season) {
        return RecordTypes.all().stream()
                .filter(type -> season.files().containsKey(type.file()))
                .mapToLong(type -> Grid.parse(season.text(type.file())).filledRows())
                .sum();
    }
}
