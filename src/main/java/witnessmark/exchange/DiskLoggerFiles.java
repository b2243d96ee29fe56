package witnessmark.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.port.LoggerFiles;

/** Files of loggers as the file system has them. */
public final class DiskLoggerFiles implements LoggerFiles {
    @Override
    public LoggerFile file(Path path) {
        return new OnDisk(path);
    }

    @Override
    public List<Lying> in(Path folder) throws IOException {
        List<Lying> all = new ArrayList<>();
        try (DirectoryStream<Path> each = Files.newDirectoryStream(folder)) {
            for (Path path : each) {
                look(path, all);
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        all.sort(Comparator.comparing(Lying::name));
        return all;
    }

    /** One that goes while it is looked at was not there. */
    private static void look(Path path, List<Lying> into) throws IOException {
        try {
            BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
            if (now.isRegularFile() && !Files.isHidden(path)) {
                into.add(new Lying(path, now.size(), now.lastModifiedTime().toMillis()));
            }
        } catch (NoSuchFileException e) {
            return;
        }
    }

    private record OnDisk(Path path) implements LoggerFile {
        @Override
        public String name() {
            return String.valueOf(path.getFileName());
        }

        @Override
        public long size() throws IOException {
            return Files.size(path);
        }

        @Override
        public InputStream open() throws IOException {
            return Files.newInputStream(path);
        }
    }
}
