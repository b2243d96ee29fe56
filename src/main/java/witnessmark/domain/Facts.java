package witnessmark.domain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Everything written so far, as one immutable whole. A write makes a new one with the next revision. */
public final class Facts {
    private final Map<Class<? extends Fact>, Table<?>> tables;
    private final long revision;

    private Facts(Map<Class<? extends Fact>, Table<?>> tables, long revision) {
        this.tables = tables;
        this.revision = revision;
    }

    /** A logbook with nothing in it. */
    public static Facts none() {
        return new Facts(Map.of(), 0);
    }

    /**
     * The same facts with these entries added, or put in place of those with the same id.
     *
     * @param changed entries of any kinds
     */
    public Facts with(Collection<? extends Entry<?>> changed) {
        Map<Class<? extends Fact>, List<Entry<?>>> byKind = new HashMap<>();
        for (Entry<?> entry : changed) {
            byKind.computeIfAbsent(entry.fact().getClass(), kind -> new ArrayList<>())
                    .add(entry);
        }
        Map<Class<? extends Fact>, Table<?>> next = new HashMap<>(tables);
        byKind.forEach((kind, entries) -> next.put(kind, extended(of(kind), entries)));
        return new Facts(next, revision + 1);
    }

    /** All entries of one kind. */
    @SuppressWarnings("unchecked") // a table is only ever put under the class of its facts
    public <F extends Fact> Table<F> of(Class<F> kind) {
        Table<?> table = tables.get(kind);
        return table == null ? new Table<>(List.of()) : (Table<F>) table;
    }

    /** Counts the writes since the logbook was opened. */
    public long revision() {
        return revision;
    }

    @SuppressWarnings("unchecked") // the entries were sorted by the class of their facts
    private static <F extends Fact> Table<F> extended(Table<F> table, List<Entry<?>> entries) {
        return table.with((List<Entry<F>>) (List<?>) entries);
    }
}
