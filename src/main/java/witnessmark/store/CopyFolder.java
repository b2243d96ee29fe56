package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The copies of one file in a folder. Those of a file of another name are left out of account. */
final class CopyFolder {
    private static final Logger LOG = LoggerFactory.getLogger(CopyFolder.class);

    /** What the name of a copy ends in until it is proven. */
    static final String ASIDE = ".new";

    private static final Duration UNDER_WAY = Duration.ofHours(1);

    private final Path folder;
    private final String stem;

    CopyFolder(Path folder, Path logbook) {
        this.folder = folder;
        this.stem = CopyName.stem(logbook);
    }

    Path path() {
        return folder;
    }

    /** The name of one made now: later than the newest whatever the clock says, else it would be thinned out first. */
    Path next(Instant clock) {
        Instant now = newest().filter(newest -> !newest.isBefore(clock))
                .map(newest -> newest.plusMillis(1))
                .orElse(clock);
        return folder.resolve(new CopyName(stem, now).file());
    }

    /** When the newest was made; empty when there is none. */
    Optional<Instant> newest() {
        try {
            return made().keySet().stream().max(Instant::compareTo);
        } catch (IOException e) {
            LOG.warn("the copies cannot be listed: {}", folder, e);
            return Optional.empty();
        }
    }

    /**
     * Removes those that are not to be kept.
     *
     * @param ours asked before one goes
     */
    void thin(Thinning thinning, Predicate<Path> ours) throws IOException {
        TreeMap<Instant, Path> made = made();
        Set<Instant> kept = thinning.kept(made.keySet());
        made.forEach((moment, copy) -> {
            if (!kept.contains(moment) && ours.test(copy)) {
                SafeFiles.remove(copy);
            }
        });
    }

    /** Removes what is left of copies that were cut short, by a stick pulled out or a program killed. */
    void sweep(Instant clock) throws IOException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> isCutShort(file, clock)).forEach(SafeFiles::remove);
        }
    }

    /** One that was begun within the hour may still be under way. */
    private boolean isCutShort(Path file, Instant clock) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(ASIDE)
                && CopyName.of(Path.of(name.substring(0, name.length() - ASIDE.length())))
                        .filter(copy -> copy.stem().equals(stem))
                        .filter(copy ->
                                Duration.between(copy.made(), clock).abs().compareTo(UNDER_WAY) > 0)
                        .isPresent();
    }

    private TreeMap<Instant, Path> made() throws IOException {
        TreeMap<Instant, Path> made = new TreeMap<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.forEach(file -> CopyName.of(file)
                        .filter(name -> name.stem().equals(stem))
                        .ifPresent(name -> made.put(name.made(), file)));
            }
        }
        return made;
    }
}
