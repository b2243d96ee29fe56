package witnessmark.exchange;

import com.fasterxml.uuid.Generators;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.logbook.port.RowsRead;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.outcome.Outcome;

/** Season folders of text tables, as {@link witnessmark.exchange} describes them. */
public final class CsvSeasonFolders implements SeasonFolders {
    private final Supplier<UUID> newId;
    private final Disk disk;

    public CsvSeasonFolders() {
        this(Generators.timeBasedEpochGenerator()::generate, new RealDisk());
    }

    /**
     * For tests.
     *
     * @param newId ids for rows that have none
     * @param disk where folders are written
     */
    CsvSeasonFolders(Supplier<UUID> newId, Disk disk) {
        this.newId = newId;
        this.disk = disk;
    }

    @Override
    public Outcome<List<Entry<?>>> read(Path folder, Facts known, RowsRead told) {
        return new FolderReader(folder, new Reading(known, newId, told)).read();
    }

    @Override
    public Beside beside(Path folder, Set<String> names) {
        return KeptFiles.beside(folder, names);
    }

    @Override
    public Outcome<Integer> write(Facts facts, Bytes kept, Path folder) {
        return new FolderWriter(facts, kept, disk).write(folder);
    }
}
