package witnessmark.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SortedMap;
import java.util.TreeMap;

/** A folder that shows one season after another; only files that differ are written, for tests with many. */
final class ReusedFolder {
    private final Path folder;
    private final SortedMap<String, byte[]> shown = new TreeMap<>();

    ReusedFolder(Path folder) {
        this.folder = folder;
    }

    /** Makes the folder hold these files and no others. */
    Path show(SeasonText season) {
        try {
            Files.createDirectories(folder);
            for (String file : shown.keySet().toArray(String[]::new)) {
                if (!season.files().containsKey(file)) {
                    Files.delete(folder.resolve(file));
                    shown.remove(file);
                }
            }
            for (var file : season.files().entrySet()) {
                if (!Arrays.equals(shown.put(file.getKey(), file.getValue()), file.getValue())) {
                    Files.write(folder.resolve(file.getKey()), file.getValue());
                }
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return folder;
    }
}
