package witnessmark.launch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.InstantSource;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.exchange.CsvStartingValues;
import witnessmark.exchange.CsvStatementFiles;
import witnessmark.exchange.CsvTableFiles;
import witnessmark.exchange.DiskLoggerFiles;
import witnessmark.exchange.IcsCalendarFiles;
import witnessmark.exchange.JsonStories;
import witnessmark.exchange.PdfFiles;
import witnessmark.logbook.port.CalendarFiles;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.LogbookFiles;
import witnessmark.logbook.port.LoggerFiles;
import witnessmark.logbook.port.PaperFiles;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.logbook.port.Settings;
import witnessmark.logbook.port.StartingValues;
import witnessmark.logbook.port.StatementFiles;
import witnessmark.logbook.port.Stories;
import witnessmark.logbook.port.TableFiles;
import witnessmark.store.DataFolder;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;
import witnessmark.store.TimeOrderedIds;

/**
 * Everything outside the use cases, joined once: files, folders, settings, the clock.
 *
 * @param data where the program keeps what belongs to no logbook
 * @param person who sits at this computer
 */
record Outside(
        DataFolder data,
        LogbookFiles files,
        SeasonFolders folders,
        CalendarFiles calendars,
        PaperFiles papers,
        TableFiles tables,
        Stories stories,
        StartingValues startingValues,
        StatementFiles statements,
        LoggerFiles traces,
        Settings settings,
        Ids ids,
        InstantSource clock,
        String person) {
    static Outside ofThisMachine() {
        DataFolder data = DataFolder.ofThisMachine();
        InstantSource clock = InstantSource.system();
        Holder holder = Holder.ofThisMachine();
        return new Outside(
                data,
                new SqliteLogbookFiles(data.path(), clock::millis, () -> device(data), holder),
                new CsvSeasonFolders(),
                new IcsCalendarFiles(),
                new PdfFiles(),
                new CsvTableFiles(),
                new JsonStories(),
                new CsvStartingValues(),
                new CsvStatementFiles(),
                new DiskLoggerFiles(),
                data.settings(),
                new TimeOrderedIds(),
                clock,
                holder.person());
    }

    private static String device(DataFolder data) {
        try {
            return data.device();
        } catch (IOException e) {
            throw new UncheckedIOException("no identity of this machine can be kept in " + data.path(), e);
        }
    }
}
