/**
 * Keeps a logbook in one SQLite file, and what belongs to the program in its data folder. Everything that says SQLite
 * is here: opening and refusing files, migrations, the write path, checks, locks and backups. {@code exchange} in
 * contrast reads and writes files that people open themselves. Open {@link witnessmark.store.SqliteLogbookFiles} first.
 */
@NullMarked
package witnessmark.store;

import org.jspecify.annotations.NullMarked;
