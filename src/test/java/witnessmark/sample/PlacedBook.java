package witnessmark.sample;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A logbook made once with the newest backup of it, to be put where tests want one: none of them then waits for another
 * backup on opening.
 *
 * @param writtenAt when the file was written, before its backup
 * @param backupPath from the folder in which data folder and logbook lie
 */
public record PlacedBook(byte[] book, FileTime writtenAt, Path backupPath, byte[] backup) {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmssSSS'Z'").withZone(ZoneOffset.UTC);

    /** Takes them from a folder and removes it. */
    public static PlacedBook takenFrom(Path folder, Path book) throws IOException {
        List<Path> all;
        try (Stream<Path> walk = Files.walk(folder)) {
            all = walk.sorted(Comparator.reverseOrder()).toList();
        }
        Path backup = all.stream()
                .filter(path -> path.startsWith(folder.resolve("data").resolve("backups")) && Files.isRegularFile(path))
                .max(Comparator.comparing(Path::getFileName))
                .orElseThrow();
        PlacedBook taken = new PlacedBook(
                Files.readAllBytes(book),
                Files.getLastModifiedTime(book),
                folder.relativize(backup),
                Files.readAllBytes(backup));
        for (Path path : all) {
            Files.delete(path);
        }
        return taken;
    }

    public PlacedBook writtenAt(FileTime time) {
        return new PlacedBook(book, time, backupPath, backup);
    }

    /** The same as if its backup had been made then: where the clock stands still, one from ahead of it is not believed. */
    public PlacedBook backedUpAt(Instant moment) {
        String stamp = STAMP.format(moment);
        String name = String.valueOf(backupPath.getFileName()).replaceFirst("\\d{8}T\\d{9}Z", stamp);
        return new PlacedBook(book, writtenAt, backupPath.resolveSibling(name), backup);
    }

    /** Puts them into a folder, the logbook under the name given. */
    public void put(Path folder, Path file) throws IOException {
        Path beside = folder.resolve(backupPath);
        Files.createDirectories(beside.toAbsolutePath().getParent());
        Files.write(beside, backup);
        Files.write(file, book);
        Files.setLastModifiedTime(file, writtenAt);
    }
}
