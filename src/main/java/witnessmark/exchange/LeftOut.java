package witnessmark.exchange;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Fact;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * What of a folder is left out, and the rows that only wait for it: they are right as far as can be told, and come by
 * themselves once the cause is mended. They are counted by file and cause in place of a problem for each.
 */
final class LeftOut {
    private final Map<Class<? extends Fact>, String> tables = new HashMap<>();
    private final Map<Class<? extends Fact>, Map<String, String>> rows = new HashMap<>();
    private final Set<Class<? extends Fact>> absent = new LinkedHashSet<>();
    private final Set<String> missed = new LinkedHashSet<>();
    private final Map<Waiting, Integer> waiting = new LinkedHashMap<>();

    private record Waiting(String file, String cause) {}

    /** Nothing of a table is taken. */
    void table(Class<? extends Fact> kind) {
        tables.put(kind, file(kind));
    }

    /** There is no table of this kind, and nothing of it in the logbook: the table is missing if a row names one. */
    void absent(Class<? extends Fact> kind) {
        absent.add(kind);
        table(kind);
    }

    /**
     * A row is not taken.
     *
     * @param names its id and what it is called
     * @param cause the file in which the fault stands: its own, or that of the row it waits for
     */
    void row(Class<? extends Fact> kind, Collection<String> names, String cause) {
        Map<String, String> ofKind = rows.computeIfAbsent(kind, k -> new HashMap<>());
        names.stream()
                .filter(name -> !name.isBlank())
                .forEach(name -> ofKind.putIfAbsent(WholeName.plain(name), cause));
    }

    /** The file to be mended before a text that names nothing can name a row; null when there is none to be had. */
    @Nullable
    String causeOf(Class<? extends Fact> kind, String text) {
        String table = tables.get(kind);
        if (table != null) {
            if (absent.contains(kind)) {
                missed.add(table);
            }
            return table;
        }
        Map<String, String> ofKind = rows.getOrDefault(kind, Map.of());
        String whole = ofKind.get(WholeName.plain(text));
        return whole != null ? whole : ofKind.get(WholeName.plain(text.substring(text.lastIndexOf('/') + 1)));
    }

    /** One more row waits. */
    void waits(String file, String cause) {
        waiting.merge(new Waiting(file, cause), 1, Integer::sum);
    }

    /** The tables that rows name and that nobody listed. */
    List<String> missed() {
        return List.copyOf(missed);
    }

    /** The rows that wait, counted, in the order in which they were met. */
    List<Problem> counted() {
        List<Problem> counted = new ArrayList<>();
        waiting.forEach((each, count) -> counted.add(
                Problem.of(ProblemKind.ROWS_WAIT, count, each.cause()).at(new Place(each.file(), 0, null))));
        return counted;
    }

    private static String file(Class<? extends Fact> kind) {
        return RecordTypes.of(kind).file();
    }
}
