package witnessmark.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Writes one season folder. It is written under another name beside the place wanted, waited for until it is on the
 * disk, and then renamed: at that place there is the folder as it was, or the whole new one.
 */
final class FolderWriter {
    private static final Logger LOG = LoggerFactory.getLogger(FolderWriter.class);

    private final Facts facts;
    private final SeasonFolders.Bytes kept;
    private final Disk disk;
    private final List<Problem> problems = new ArrayList<>();

    FolderWriter(Facts facts, SeasonFolders.Bytes kept, Disk disk) {
        this.facts = facts;
        this.kept = kept;
        this.disk = disk;
    }

    Outcome<Integer> write(Path wanted) {
        Path folder = wanted.toAbsolutePath().normalize();
        Path beside = null;
        try {
            if (Files.exists(folder)) {
                folder = folder.toRealPath();
                if (!Files.isDirectory(folder)) {
                    return Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, wanted.toString()));
                }
                if (!mayReplace(folder)) {
                    return Outcome.didNot(Problem.of(ProblemKind.FOLDER_NOT_EMPTY, wanted.toString()));
                }
                String changed = changedSince(folder);
                if (changed != null) {
                    return Outcome.didNot(Problem.of(ProblemKind.FOLDER_CHANGED, wanted.toString(), changed));
                }
            }
            beside = disk.folderBeside(folder);
            int rows = fill(beside);
            putInPlace(beside, folder);
            return problems.isEmpty() ? Outcome.worked(rows) : new Outcome.WorkedExcept<>(rows, problems);
        } catch (IOException | UncheckedIOException e) {
            return Outcome.didNot(WriteFailure.problem(wanted, notLeaving(beside, e)));
        }
    }

    private int fill(Path folder) throws IOException {
        ReferenceTexts references = new ReferenceTexts(facts);
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, String> digests = new LinkedHashMap<>();
        for (RecordType<?> type : RecordTypes.all()) {
            int rows = writeFile(type, folder, references);
            if (rows > 0) {
                counts.put(type.file(), rows);
                digests.put(type.file(), Digests.of(folder.resolve(type.file())));
            }
        }
        Map<String, Long> beside = writeKept(folder);
        Path index = folder.resolve(SeasonIndex.FILE);
        try (OutputStream to = disk.create(index)) {
            to.write(new SeasonIndex(counts, digests, beside).text().getBytes(StandardCharsets.UTF_8));
        }
        disk.sync(index);
        disk.sync(folder);
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    private <F extends Fact> int writeFile(RecordType<F> type, Path folder, ReferenceTexts references)
            throws IOException {
        FileText<F> text = new FileText<>(type, facts, references);
        if (text.rows() > 0) {
            Path file = folder.resolve(type.file());
            try (OutputStream to = disk.create(file)) {
                text.write(to);
            }
            disk.sync(file);
        }
        return text.rows();
    }

    /** What records name, as far as it is there: one after the other, so that only one is in memory. */
    private Map<String, Long> writeKept(Path folder) throws IOException {
        Map<String, Long> written = new LinkedHashMap<>();
        for (String name : named()) {
            Outcome<Optional<Kept>> found = kept.of(name);
            problems.addAll(found.problems());
            Optional<Kept> bytes = found.didWork() ? found.orThrow() : Optional.empty();
            if (bytes.isPresent()) {
                if (written.isEmpty()) {
                    disk.folder(folder.resolve(KeptFiles.FOLDER));
                }
                KeptFiles.write(disk, folder, bytes.get());
                written.put(name, (long) bytes.get().size());
            }
        }
        if (!written.isEmpty()) {
            disk.sync(folder.resolve(KeptFiles.FOLDER));
        }
        return written;
    }

    private Set<String> named() {
        Set<String> names = new TreeSet<>();
        for (RecordType<?> type : RecordTypes.all()) {
            facts.of(type.kind()).all().stream()
                    .flatMap(
                            entry -> Stream.of(entry.fact().kept(), entry.fact().beside()))
                    .filter(Objects::nonNull)
                    .forEach(names::add);
        }
        return names;
    }

    private void putInPlace(Path written, Path folder) throws IOException {
        Path aside = null;
        if (Files.exists(folder)) {
            aside = written.resolveSibling(written.getFileName() + "-before");
            disk.rename(folder, aside);
        }
        try {
            disk.rename(written, folder);
            Path parent = folder.getParent();
            if (parent != null) {
                disk.sync(parent);
            }
        } catch (IOException e) {
            putBack(written, folder, aside, e);
            throw e;
        }
        if (aside != null) {
            forget(aside);
        }
    }

    private void putBack(Path written, Path folder, @Nullable Path aside, IOException why) {
        try {
            if (!Files.exists(written)) {
                disk.rename(folder, written);
            }
            if (aside != null) {
                disk.rename(aside, folder);
            }
        } catch (IOException e) {
            LOG.error("the folder as it was may be at {}", aside, e);
            why.addSuppressed(e);
        }
    }

    /** The new folder is in its place; what it replaced is no loss, nor is it a failure if some of it stays. */
    private void forget(Path aside) {
        try {
            deleteOurs(aside);
        } catch (IOException e) {
            LOG.warn("a replaced season folder stays at {}", aside, e);
        }
    }

    /** Whether there is nothing in a folder but what an earlier writing put there. */
    private static boolean mayReplace(Path folder) throws IOException {
        List<String> names = new ArrayList<>();
        boolean beside = false;
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                String name = String.valueOf(path.getFileName());
                if (name.equals(KeptFiles.FOLDER)) {
                    beside = true;
                    continue;
                }
                if (!isOurs(name) || !Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
                    return false;
                }
                names.add(name);
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        if (names.isEmpty() && !beside) {
            return true;
        }
        Optional<SeasonIndex> index = index(folder);
        return index.isPresent()
                && names.stream()
                        .allMatch(name -> name.equals(SeasonIndex.FILE)
                                || index.get().rows().containsKey(name))
                && (!beside || KeptFiles.onlyOurs(folder, index.get().kept().keySet()));
    }

    private static Optional<SeasonIndex> index(Path folder) {
        return SeasonIndex.read(folder, new Problems()).fold(Optional::of, problems -> Optional.empty());
    }

    /** A table that somebody changed since the folder was written, or null: that work is not to be written over. */
    private static @Nullable String changedSince(Path folder) throws IOException {
        SeasonIndex index =
                Files.exists(folder.resolve(SeasonIndex.FILE)) ? index(folder).orElse(null) : null;
        if (index == null) {
            return null;
        }
        for (Map.Entry<String, String> table : index.digests().entrySet()) {
            Path file = folder.resolve(table.getKey());
            if (Files.exists(file) && !Digests.of(file).equals(table.getValue())) {
                return table.getKey();
            }
        }
        for (String name : index.kept().keySet()) {
            if (Kept.isName(name) && KeptFiles.changed(folder, name)) {
                return KeptFiles.FOLDER + "/" + name;
            }
        }
        return null;
    }

    private static boolean isOurs(String name) {
        return name.equals(SeasonIndex.FILE)
                || RecordTypes.all().stream().anyMatch(type -> type.file().equals(name));
    }

    private void deleteOurs(Path folder) throws IOException {
        for (RecordType<?> type : RecordTypes.all()) {
            disk.delete(folder.resolve(type.file()));
        }
        KeptFiles.delete(disk, folder);
        disk.delete(folder.resolve(SeasonIndex.FILE));
        disk.delete(folder);
    }

    /** Takes away what was half written, and gives back the error that stopped the writing. */
    private Exception notLeaving(@Nullable Path halfWritten, Exception error) {
        if (halfWritten != null) {
            try {
                deleteOurs(halfWritten);
            } catch (IOException e) {
                error.addSuppressed(e);
            }
        }
        return error;
    }
}
