package witnessmark.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.store.DataFolder;

/** The log is kept in the data folder, for its owner alone, and its end goes into a report. */
class LogsTest {
    @TempDir
    Path folder;

    @Test
    void the_data_folder_is_made_for_its_owner_alone_and_holds_the_log() throws Exception {
        Logger root = Logger.getLogger("");
        Handler[] before = root.getHandlers();
        Level level = root.getLevel();
        DataFolder data = new DataFolder(folder.resolve("data"));
        try {
            assertThat(Logs.end(data)).as("none yet").startsWith("no log");
            Logs.to(data);
            root.warning("something to find again");
            assertThat(Logs.end(data)).contains("something to find again");
            for (Path made : new Path[] {data.path(), data.path().resolve(Logs.FOLDER)}) {
                assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(made)))
                        .isEqualTo("rwx------");
            }
        } finally {
            for (Handler handler : root.getHandlers()) {
                root.removeHandler(handler);
                handler.close();
            }
            for (Handler handler : before) {
                root.addHandler(handler);
            }
            root.setLevel(level);
        }
    }
}
