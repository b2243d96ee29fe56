package witnessmark.store;

import java.sql.SQLException;

/**
 * One figure for a whole logbook: SHA-256 over its identity and the hash of every change in its history, device by
 * device. Where the check of a logbook finds nothing, its records follow from that history; so two logbooks that are
 * good and have the same digest hold the same.
 */
final class Digest {
    private static final int HASH = 15;

    private Digest() {}

    static String of(Database database, Canonical canonical) throws SQLException {
        StringBuilder all = new StringBuilder(Home.idOf(database)).append('\n');
        database.each(
                "amendment/by_device", row -> all.append(row.getString(HASH)).append('\n'));
        return canonical.hash(all.toString());
    }
}
