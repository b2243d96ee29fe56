package witnessmark.logbook.port;

import java.io.IOException;
import java.io.InputStream;

/** A file of a logger, opened as often as it is asked for. */
public interface LoggerFile {
    /** What it is called, without its folder. */
    String name();

    /** Its size now, bytes. */
    long size() throws IOException;

    /** Its bytes from the first on. */
    InputStream open() throws IOException;
}
