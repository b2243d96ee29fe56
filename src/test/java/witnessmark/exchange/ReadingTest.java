package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What tests of reading share: a folder is read, and its problems and left-out rows are compared as a whole. */
abstract class ReadingTest {
    final CsvSeasonFolders folders = Folders.unsynced();

    @TempDir
    Path place;

    /** Reads a folder into an empty logbook. */
    Outcome<List<Entry<?>>> read(SeasonText season) {
        return folders.read(season.in(place.resolve("season")), Facts.none());
    }

    /**
     * The problems of the small season spoilt in some way are these and no others, and just these rows are left out.
     *
     * @param leftOut the last figures of their ids
     */
    void assertRead(SeasonText season, List<Integer> leftOut, Problem... problems) {
        Outcome<List<Entry<?>>> read = read(season);
        assertThat(read.problems()).containsExactly(problems);
        assertThat(ids(read.orThrow())).containsExactlyInAnyOrderElementsOf(allBut(leftOut));
    }

    static Problem problem(String file, long line, @Nullable String column, ProblemKind kind, Object... facts) {
        return Problem.of(kind, facts).at(new Place(file, line, column));
    }

    static List<Integer> rows(Integer... rows) {
        return Arrays.asList(rows);
    }

    static List<String> ids(List<Entry<?>> entries) {
        return entries.stream().map(entry -> entry.id().text()).toList();
    }

    private static List<String> allBut(List<Integer> leftOut) {
        List<String> ids = new ArrayList<>();
        for (int i = 1; i <= SMALL_SEASON_ROWS; i++) {
            if (!leftOut.contains(i)) {
                ids.add(Folders.id(i));
            }
        }
        return ids;
    }

    static final int SMALL_SEASON_ROWS = 146;
}
