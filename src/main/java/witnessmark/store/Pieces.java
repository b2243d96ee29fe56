package witnessmark.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;

/**
 * Puts together what is left of a logbook whose list of tables is torn: each row that lies in it goes into the table of
 * which its checksum proves it to be, in a file without guards, for {@link Wreck} to read. Changes prove themselves by
 * their hash there.
 *
 * <p>A page that was given back still holds rows as they were on an earlier day. So a row counts only on a page that a
 * tree leads to, or on the one page of a table that needs no more.
 */
final class Pieces {
    private static final Logger LOG = LoggerFactory.getLogger(Pieces.class);
    private static final String AMENDMENT = "amendment";

    /** A table whose rows are known by their checksum, in the order of its columns. */
    private record Table(RecordType<?> type, List<String> columns) {
        int at(String column) {
            return columns.indexOf(column);
        }
    }

    private final Database into;
    private final Canonical canonical;
    private final List<Table> tables = new ArrayList<>();
    private final int columnsOfAmendment;
    private final Set<String> led = new HashSet<>();
    private final Map<String, Set<Integer>> alone = new HashMap<>();
    private @Nullable Table last;

    private Pieces(Database into, Canonical canonical) throws SQLException {
        this.into = into;
        this.canonical = canonical;
        for (RecordType<?> type : RecordTypes.all()) {
            tables.add(new Table(type, columns(type.name())));
        }
        this.columnsOfAmendment = columns(AMENDMENT).size();
    }

    private List<String> columns(String table) throws SQLException {
        List<String> columns = new ArrayList<>();
        into.each("file/columns", row -> columns.add(Database.text(row, 1)), table);
        return columns;
    }

    /** @param into with the tables of our form, empty and without guards */
    static void gather(Path damaged, Database into, Canonical canonical) throws IOException, SQLException {
        try (LeafPages pages = new LeafPages(damaged)) {
            new Pieces(into, canonical).from(pages);
        }
    }

    private void from(LeafPages pages) throws IOException, SQLException {
        Set<Integer> children = pages.children();
        pages.each((page, values) -> {
            Table table = tableOf(values);
            if (table == null) {
                change(values);
            } else if (children.contains(page)) {
                led.add(table.type().name());
                put(table, values);
            } else {
                alone.computeIfAbsent(table.type().name(), any -> new HashSet<>())
                        .add(page);
            }
        });
        for (Map.Entry<String, Set<Integer>> found : alone.entrySet()) {
            if (led.contains(found.getKey()) || found.getValue().size() > 1) {
                LOG.info("pages of {} may be of an earlier day: {}", found.getKey(), found.getValue());
                continue;
            }
            for (int page : found.getValue()) {
                pages.each(page, (number, values) -> {
                    Table table = tableOf(values);
                    if (table != null) {
                        put(table, values);
                    }
                });
            }
        }
    }

    /** The table of which a row is by its checksum; rows that lie together are most often of one. */
    private @Nullable Table tableOf(List<@Nullable Object> values) {
        Table before = last;
        if (before != null && isOf(before, values)) {
            return before;
        }
        for (Table table : tables) {
            if (table != before && isOf(table, values)) {
                last = table;
                return table;
            }
        }
        return null;
    }

    private boolean isOf(Table table, List<@Nullable Object> values) {
        int missing = table.columns().size() - values.size();
        int checksumAt = table.at("checksum");
        if (missing < 0
                || missing > table.type().addedLater().size()
                || checksumAt >= values.size()
                || !(values.get(checksumAt) instanceof String checksum)) {
            return false;
        }
        Map<String, @Nullable Object> image = new TreeMap<>();
        for (String name : Rows.imageColumns(table.type())) {
            Object value = value(table, values, name);
            if (value instanceof byte[]) {
                return false;
            }
            image.put(name, value);
        }
        return Rows.isSealed(table.type(), image, checksum, canonical);
    }

    /** A column that came later is missing in a row from before. */
    private static @Nullable Object value(Table table, List<@Nullable Object> values, String column) {
        int at = table.at(column);
        return at < values.size() ? values.get(at) : null;
    }

    private void put(Table table, List<@Nullable Object> values) {
        List<@Nullable Object> row = new ArrayList<>();
        row.add(value(table, values, "id"));
        Rows.imageColumns(table.type()).forEach(column -> row.add(value(table, values, column)));
        Rows.STAMP.forEach(column -> row.add(value(table, values, column)));
        insert(table.type().name(), row);
    }

    private void change(List<@Nullable Object> values) {
        if (values.size() == columnsOfAmendment && values.stream().noneMatch(byte[].class::isInstance)) {
            insert(AMENDMENT, values);
        }
    }

    private void insert(String table, List<@Nullable Object> values) {
        try {
            into.run(table + "/insert", values.toArray());
        } catch (SQLException e) {
            LOG.debug("a row that may be of {} is none, or lies there twice", table, e);
        }
    }
}
