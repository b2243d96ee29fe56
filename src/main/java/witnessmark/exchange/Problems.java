package witnessmark.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** The problems met while a folder is read, file by file. */
final class Problems {
    private final List<Problem> found = new ArrayList<>();
    private String file = "";
    private int fileBegins;

    /** From here on problems are in this file. Those of the file before are put in the order of its lines. */
    void beginFile(String name) {
        sortFile();
        file = name;
        fileBegins = found.size();
    }

    /** Something wrong with the whole file. */
    void inFile(ProblemKind kind, Object... facts) {
        at(0, null, kind, facts);
    }

    void at(long line, @Nullable String column, ProblemKind kind, Object... facts) {
        if (!full()) {
            found.add(Problem.of(kind, facts).at(new Place(file, line, column)));
        }
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

    /** Worked, worked except for these problems, or did not because there are too many of them. */
    <T> Outcome<T> outcome(T value) {
        sortFile();
        if (full()) {
            return Outcome.didNot(found);
        }
        return found.isEmpty() ? Outcome.worked(value) : new Outcome.WorkedExcept<>(value, found);
    }

    private void sortFile() {
        found.subList(fileBegins, found.size()).sort(Comparator.comparingLong(Problems::line));
    }

    private static long line(Problem problem) {
        Place place = problem.place();
        return place == null ? 0 : place.row();
    }
}
