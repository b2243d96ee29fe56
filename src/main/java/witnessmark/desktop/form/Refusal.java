package witnessmark.desktop.form;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Why the last thing asked for did not work. What was refused for what is typed is no longer said once something else
 * is typed: that is judged anew. What broke is said until something is asked for again.
 */
public final class Refusal {
    /** Nothing typed mends these. */
    private static final Set<ProblemKind> OF_THE_FILE = Set.of(
            ProblemKind.CANNOT_WRITE,
            ProblemKind.CANNOT_READ_FILE,
            ProblemKind.DISK_FULL,
            ProblemKind.FILE_MOVED_AWAY,
            ProblemKind.LOGBOOK_IN_USE,
            ProblemKind.OPEN_READ_ONLY,
            ProblemKind.LOGBOOK_IS_COPY,
            ProblemKind.PLACE_READ_ONLY);

    private String said = "";
    private @Nullable Object about;

    /** The sentences, empty when nothing went wrong. */
    public String said() {
        return said;
    }

    /** Something is asked for afresh. */
    public void none() {
        said = "";
        about = null;
    }

    /**
     * The logbook did not take it.
     *
     * @param words a problem as a sentence
     * @param typed what stood on the form then; told again with {@link #typed}
     */
    public void refused(List<Problem> problems, Function<Problem, String> words, Object typed) {
        said = problems.stream().map(words).collect(Collectors.joining("\n"));
        about = problems.stream().map(Problem::kind).anyMatch(OF_THE_FILE::contains) ? null : typed;
    }

    /** It did not come to a refusal. */
    public void broke(String sentence) {
        said = sentence;
        about = null;
    }

    /** What stands on the form now. */
    public void typed(Object now) {
        if (about != null && !about.equals(now)) {
            none();
        }
    }
}
