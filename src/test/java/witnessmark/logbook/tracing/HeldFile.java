package witnessmark.logbook.tracing;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import witnessmark.logbook.port.LoggerFile;

/** A logger's file in memory; one that grows, breaks or is gone is made of it. */
public class HeldFile implements LoggerFile {
    private final String name;
    private final byte[] bytes;

    public HeldFile(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes.clone();
    }

    public HeldFile(String name, String text) {
        this(name, text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public long size() throws IOException {
        return bytes.length;
    }

    @Override
    public InputStream open() throws IOException {
        return new ByteArrayInputStream(bytes);
    }
}
