package witnessmark.launch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/** The program's log: five files of a megabyte in the data folder, written in turn. Nothing goes to the console. */
final class Logs {
    static final String FOLDER = "log";
    private static final int BYTES = 1 << 20;
    private static final int FILES = 5;

    private Logs() {}

    static void to(Path dataFolder) {
        Logger root = Logger.getLogger("");
        for (Handler handler : root.getHandlers()) {
            root.removeHandler(handler);
        }
        root.setLevel(Level.INFO);
        try {
            Path folder = Files.createDirectories(dataFolder.resolve(FOLDER));
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
