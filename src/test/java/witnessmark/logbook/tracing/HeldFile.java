package witnessmark.logbook.tracing;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import witnessmark.logbook.port.LoggerFile;

/** A logger's file in memory. */
public record HeldFile(String name, byte[] bytes) implements LoggerFile {
    @Override
    public long size() {
        return bytes.length;
    }

    @Override
    public InputStream open() {
        return new ByteArrayInputStream(bytes);
    }
}
