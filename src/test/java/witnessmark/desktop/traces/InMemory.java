package witnessmark.desktop.traces;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import witnessmark.logbook.port.LoggerFile;

/** A file of a logger that is on no disk. */
class InMemory implements LoggerFile {
    private final String name;
    private final byte[] bytes;

    InMemory(String name, String text) {
        this(name, text.getBytes(StandardCharsets.UTF_8));
    }

    InMemory(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes.clone();
    }

    /** Names and texts in turn. */
    static byte[] zip(String... namesAndTexts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (int i = 0; i < namesAndTexts.length; i += 2) {
                zip.putNextEntry(new ZipEntry(namesAndTexts[i]));
                zip.write(namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
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
