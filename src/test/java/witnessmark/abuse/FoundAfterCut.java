package witnessmark.abuse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;
import java.util.zip.Checksum;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.store.SeenPlace;
import witnessmark.store.Sentences;
import witnessmark.store.TestLogbooks;

/**
 * Opens what a power cut left, in the program's own way, and says what is found. States that are the same to the byte
 * are opened once.
 */
final class FoundAfterCut {
    /**
     * What was found.
     *
     * @param opened whether it opened to be written, with no problem told
     * @param faults what the program said, and what its check found
     * @param records revision by record
     * @param draft the draft kept, or nothing
     * @param bare photos that are written without their bytes
     */
    record Found(boolean opened, List<Problem> faults, Map<String, Long> records, String draft, List<String> bare) {}

    private static final int MOST_KEPT = 5;
    private static final Pattern PHOTO = Pattern.compile("\\.photos/\\w\\w/[0-9a-f]{64}$");

    private final Path place;
    private final Map<List<Long>, Found> seen = new HashMap<>();
    /** Of what is the same array in state after state: content that was safe all the while. */
    private final Map<byte[], Long> sums = new WeakHashMap<>();

    private final String logbookId;
    private final @Nullable Path kept;
    private int states;
    private int keptSoFar;

    /**
     * @param place a folder for the files of one state at a time
     * @param logbookId which logbook it is all about
     * @param kept where states that are wrong are kept; null for nowhere
     */
    FoundAfterCut(Path place, String logbookId, @Nullable Path kept) {
        this.place = place;
        this.logbookId = logbookId;
        this.kept = kept;
    }

    /** Keeps the files of a state for whoever looks into what went wrong; the first few are enough. */
    void keep(Map<String, byte[]> files, String name) throws IOException {
        if (kept == null || keptSoFar++ >= MOST_KEPT) {
            return;
        }
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path to = kept.resolve(name)
                    .resolve(String.valueOf(Path.of(file.getKey()).getFileName()));
            Files.createDirectories(to.getParent());
            Files.write(to, file.getValue());
        }
    }

    int distinct() {
        return seen.size();
    }

    int states() {
        return states;
    }

    /**
     * Opens a state.
     *
     * @param files path to content
     * @param folder the folder they lay in
     * @param logbook which of them
     */
    Found open(Map<String, byte[]> files, Path folder, Path logbook) throws IOException {
        states++;
        List<Long> key = List.of(
                sum(files, logbook.toString()),
                sum(files, logbook + "-wal"),
                sum(files, logbook + "-journal"),
                seen(files),
                photos(files),
                files.keySet().stream().anyMatch(name -> name.startsWith(folder + "/data")) ? 1L : 0L);
        Found found = seen.get(key);
        if (found == null) {
            found = opened(files, folder, logbook);
            seen.put(key, found);
        }
        return found;
    }

    private Found opened(Map<String, byte[]> files, Path folder, Path logbook) throws IOException {
        clear();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            String name = folder.relativize(Path.of(file.getKey())).toString();
            Path at = place.resolve(folder.relativize(logbook).toString());
            Path to = place.resolve(name.replace(SeenPlace.of(logbook), SeenPlace.of(at))); // as if it had lain here
            Files.createDirectories(to.getParent());
            WholeLogbook.put(to, file.getValue());
        }
        asBackedUp();
        TestLogbooks logbooks = new TestLogbooks(place);
        logbooks.clock.addAndGet(86_400_000);
        Outcome<Logbook> opened =
                logbooks.files.open(place.resolve(folder.relativize(logbook).toString()));
        Sentences.complete(opened.problems());
        if (!opened.didWork()) {
            return new Found(false, opened.problems(), Map.of(), "", List.of());
        }
        try (Logbook book = opened.orThrow()) {
            List<Problem> faults = Stream.concat(opened.problems().stream(), book.verify().stream())
                    .filter(problem -> problem.kind() != ProblemKind.ENTRIES_KEPT_ASIDE)
                    .toList();
            String draft = book.drafts()
                    .find("run", "")
                    .map(kept -> kept.fields().get("text"))
                    .orElse("");
            Map<String, Long> records = new HashMap<>();
            Truth.entries(book.facts())
                    .values()
                    .forEach(entry -> records.put(entry.id().text(), entry.rev()));
            return new Found(book.readOnly().isEmpty(), faults, records, draft, CardPhoto.bare(book));
        }
    }

    /** The sign of a backup of the same day, so that opening is not about making another. */
    private void asBackedUp() throws IOException {
        Path backups = place.resolve("data-device-a").resolve("backups").resolve(logbookId);
        Files.createDirectories(backups);
        Files.write(backups.resolve("team-20260101T000100000Z.witness"), new byte[0]);
    }

    private void clear() throws IOException {
        try (Stream<Path> all = Files.walk(place)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.delete(file);
            }
        }
    }

    /** What the program keeps outside the logbook of what was in it. */
    private long seen(Map<String, byte[]> files) {
        return sum(files, name -> name.contains("/witness/"));
    }

    /** Photos by the names they belong under: what lies aside is nobody's. */
    private long photos(Map<String, byte[]> files) {
        return sum(files, name -> PHOTO.matcher(name).find());
    }

    private long sum(Map<String, byte[]> files, Predicate<String> which) {
        return files.keySet().stream()
                .filter(which)
                .sorted()
                .mapToLong(name -> sum(files, name))
                .reduce(17, (all, one) -> all * 31 + one);
    }

    private long sum(Map<String, byte[]> files, String name) {
        byte[] content = files.get(name);
        return content == null ? -1 : sums.computeIfAbsent(content, FoundAfterCut::sum);
    }

    private static long sum(byte[] content) {
        Checksum one = new CRC32C();
        Checksum other = new CRC32();
        one.update(content);
        other.update(content);
        return one.getValue() << 32 ^ other.getValue();
    }
}
