package witnessmark.logbook;

import java.nio.file.Path;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.outcome.Outcome;

/** Writes the whole logbook to a season folder that can be opened, compared and read back exactly. */
public final class ExportSeason {
    private final SeasonFolders folders;

    public ExportSeason(SeasonFolders folders) {
        this.folders = folders;
    }

    /**
     * @param folder new or empty
     * @return how many rows were written; worked-except when something kept beside them could not be read
     */
    public Outcome<Integer> export(Desk desk, Path folder) {
        return folders.write(desk.logbook().facts(), desk.logbook()::kept, folder);
    }
}
