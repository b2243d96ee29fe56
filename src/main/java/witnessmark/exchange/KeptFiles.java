package witnessmark.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.SeasonFolders;

/**
 * The files {@code kept/<SHA-256>} of a season folder: bytes that records name. A file is only ever looked for by the
 * name a record gives, is no link, and is taken when it is what its name says.
 */
final class KeptFiles {
    static final String FOLDER = "kept";

    private static final Logger LOG = LoggerFactory.getLogger(KeptFiles.class);

    private KeptFiles() {}

    /** What of the names wanted is there. Each file is read once, piece by piece. */
    static SeasonFolders.Beside beside(Path season, Set<String> names) {
        List<Kept> whole = new ArrayList<>();
        Set<String> missing = new HashSet<>();
        Set<String> others = new HashSet<>();
        long left = Limits.KEPT;
        for (String name : new TreeSet<>(names)) {
            try {
                Path file = file(season, name);
                long size = Files.size(file);
                if (size < 1
                        || size > Math.min(Kept.MOST, left)
                        || !digest(file).equals(name)) {
                    others.add(name);
                    continue;
                }
                left -= size;
                whole.add(Kept.at(name, (int) size, () -> open(file)));
            } catch (NoSuchFileException e) {
                missing.add(name);
            } catch (IOException e) {
                LOG.warn("what is kept as {} in {} cannot be read", name, season, e);
                others.add(name);
            }
        }
        return new SeasonFolders.Beside(whole, missing, others);
    }

    /** @throws IOException if there is something else than a file; no such file if there is nothing */
    private static Path file(Path season, String name) throws IOException {
        Path folder = season.resolve(FOLDER);
        if (!Kept.isName(name) || !Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw new NoSuchFileException(name);
        }
        Path file = folder.resolve(name);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new NoSuchFileException(name);
        }
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
                || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException("no file of a season folder");
        }
        return file;
    }

    private static InputStream open(Path file) throws IOException {
        return Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS);
    }

    private static String digest(Path file) throws IOException {
        try (InputStream in = open(file)) {
            return Digests.of(in);
        }
    }

    /** Writes one file. */
    static void write(Disk disk, Path season, Kept kept) throws IOException {
        Path file = season.resolve(FOLDER).resolve(kept.sha256());
        try (InputStream from = kept.open();
                OutputStream to = disk.create(file)) {
            from.transferTo(to);
        }
        disk.sync(file);
    }

    /** Whether there is nothing in the folder of kept bytes but files that an earlier writing put there. */
    static boolean onlyOurs(Path season, Set<String> written) throws IOException {
        Path folder = season.resolve(FOLDER);
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                if (!written.contains(String.valueOf(path.getFileName()))
                        || !Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
                    return false;
                }
            }
            return true;
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
    }

    /** Whether a file is there and is no longer what its name says. */
    static boolean changed(Path season, String name) throws IOException {
        Path file = season.resolve(FOLDER).resolve(name);
        return Files.exists(file) && !digest(file).equals(name);
    }

    /** Takes the folder away with the files that are named as ours are. */
    static void delete(Disk disk, Path season) throws IOException {
        Path folder = season.resolve(FOLDER);
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            all.forEach(path -> {
                if (Kept.isName(String.valueOf(path.getFileName()))) {
                    files.add(path);
                }
            });
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        for (Path file : files) {
            disk.delete(file);
        }
        disk.delete(folder);
    }
}
