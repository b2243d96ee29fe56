package witnessmark.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** The problems met while a folder is read, file by file. */
final class Problems {
    private final List<Problem> found = new ArrayList<>();
    private final Map<Long, String> rows = new HashMap<>();
    private String file = "";
    private int fileBegins;

    /** From here on problems are in this file. Those of the file before are put in the order of its lines. */
    void beginFile(String name) {
        sortFile();
        file = name;
        rows.clear();
        fileBegins = found.size();
    }

    /** Something wrong with the whole file. */
    void inFile(ProblemKind kind, Object... facts) {
        at(0, null, kind, facts);
    }

    /** From here on problems of this line name the row that begins there. */
    void row(long line, String named) {
        if (!named.isEmpty()) {
            rows.put(line, named);
        }
    }

    /** A place in the file that is read. */
    Place place(long line, @Nullable String column) {
        return new Place(file, line, rows.getOrDefault(line, ""), column);
    }

    void at(long line, @Nullable String column, ProblemKind kind, Object... facts) {
        if (!full()) {
            found.add(Problem.of(kind, facts).at(place(line, column)));
        }
    }

    /**
     * A row turned out to wait for another: what it names and nobody has is then no fault of its own.
     *
     * @param before how many problems there were before the row
     */
    void forgiveUnknown(int before) {
        found.subList(Math.min(before, found.size()), found.size())
                .removeIf(problem -> problem.kind() == ProblemKind.REFERENCE_UNKNOWN);
    }

    int count() {
        return found.size();
    }

    /** Whether any came after there were so many; when no more are counted, always. */
    boolean countedSince(int before) {
        return found.size() > before || full();
    }

    /** Whether there are so many that reading on is of no use. */
    boolean full() {
        return found.size() >= Limits.PROBLEMS;
    }

    /**
     * Worked, worked except for these problems, or did not because there are too many of them.
     *
     * @param waiting the rows that wait, told after what they wait for
     */
    <T> Outcome<T> outcome(T value, List<Problem> waiting) {
        sortFile();
        if (full()) {
            return Outcome.didNot(found);
        }
        List<Problem> all = new ArrayList<>(found);
        all.addAll(waiting);
        return all.isEmpty() ? Outcome.worked(value) : new Outcome.WorkedExcept<>(value, all);
    }

    private void sortFile() {
        found.subList(fileBegins, found.size()).sort(Comparator.comparingLong(Problems::line));
    }

    private static long line(Problem problem) {
        Place place = problem.place();
        return place == null ? 0 : place.row();
    }
}
