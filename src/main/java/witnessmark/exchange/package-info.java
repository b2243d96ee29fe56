/**
 * The season folder: a whole logbook as plain text tables that a person can open, compare and edit. {@code store} keeps
 * the logbook itself; this room only carries facts in and out.
 *
 * <h2>The folder</h2>
 *
 * <p>One table for each kind of record, {@code season.json} beside them. A kind without rows has no table.
 *
 * <pre>
 * {
 *   "format": "witness-mark season folder",
 *   "version": 1,
 *   "rows": {
 *     "team.csv": 1,
 *     "runs.csv": 90
 *   }
 * }
 * </pre>
 *
 * <p>A table is UTF-8 without byte order mark, RFC 4180 with line feeds, quoted only where a field holds a comma, a
 * quote, a line break or a space at an end. The first row is the heading: {@code id}, the record's own columns with
 * their units, {@code standing} (empty when in force) and {@code struck_because}. Rows stand in order of id. A column
 * that refers to another row holds its name, after the name of what it is known within ({@code K03/2} is build 2 of
 * engine K03), or its id where it has no name or shares it. Moments are RFC 9557, days ISO 8601, figures have a decimal
 * point. The same facts always give the same bytes.
 *
 * <p>Texts are written exactly as they were typed, also those that begin with {@code = + - @}: a folder is there to be
 * read back, and a sign put before a text would be read back as part of it. Whoever opens a table in a spreadsheet
 * imports it with all columns as text. A text that is empty and one that was not written down are the same in a table.
 *
 * <h2>What is kept beside records</h2>
 *
 * <p>Bytes that a record names, such as the samples of a trace, lie in the folder {@code kept}, each in a file called by its
 * SHA-256; {@code season.json} lists them with their sizes under {@code kept}. They are only looked for by the name a
 * record gives, links are not followed, and a file that is not what its name says is not taken. A record whose bytes are
 * missing is taken all the same; reading the folder again once the file is there brings it along.
 *
 * <h2>By hand</h2>
 *
 * <p>A folder without {@code season.json} is taken for one made by hand: {@code id} and every column that may be empty
 * may be missing. A row without id gets a new one, unless the logbook holds the same row already; a column that is
 * missing says nothing, so a row the logbook has keeps there what it has. In any folder a moment may be a day alone,
 * which means after the last run of that day in the team's zone, or a day and time by the clock of the row's event,
 * else the team's; columns may stand in any order; a byte order mark and other line ends are read.
 *
 * <h2>Bad rows</h2>
 *
 * <p>A row that cannot be taken is left out with its place and reason. Rows that refer to it wait for it: they are left
 * out too, and counted by file after all causes rather than named one by one. A table with
 * unknown or missing columns, in another encoding, or shorter than {@code season.json} says is left out as a whole,
 * since what is read of it would not be what was written.
 *
 * <p>Open {@link witnessmark.exchange.CsvSeasonFolders} first, then {@link witnessmark.exchange.FolderReader}.
 */
@NullMarked
package witnessmark.exchange;

import org.jspecify.annotations.NullMarked;
