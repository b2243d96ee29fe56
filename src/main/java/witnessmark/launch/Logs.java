package witnessmark.launch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import witnessmark.store.DataFolder;

/** The program's log: five files of a megabyte in the data folder, written in turn. Nothing goes to the console. */
final class Logs {
    static final String FOLDER = "log";
    private static final int BYTES = 1 << 20;
    private static final int FILES = 5;

    /** More than that nobody reads, and it is of another day. */
    private static final int LAST_LINES = 300;

    private Logs() {}

    /** The last lines of the log; what went wrong with reading it when it cannot be read. */
    static String end(DataFolder data) {
        Path newest = data.path().resolve(FOLDER).resolve("witness-mark.0.log");
        try {
            List<String> lines = Files.readAllLines(newest, StandardCharsets.UTF_8);
            return String.join("\n", lines.subList(Math.max(0, lines.size() - LAST_LINES), lines.size()));
        } catch (IOException e) {
            return "no log: " + e.getClass().getSimpleName();
        }
    }

    static void to(DataFolder data) {
        Logger root = Logger.getLogger("");
        for (Handler handler : root.getHandlers()) {
            root.removeHandler(handler);
        }
        root.setLevel(Level.INFO);
        try {
            Path folder = data.privateFolder(FOLDER);
            FileHandler file =
                    new FileHandler(folder.resolve("witness-mark.%g.log").toString(), BYTES, FILES, true);
            file.setFormatter(new SimpleFormatter());
            file.setEncoding("UTF-8");
            root.addHandler(file);
        } catch (IOException e) {
            root.log(Level.FINE, "no log can be kept; the program works without one", e);
        }
    }
}
