package witnessmark.sample;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.LoggerFigures;
import witnessmark.domain.LoggerForm;
import witnessmark.domain.RevExponent;
import witnessmark.domain.Standing;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.exchange.JsonStories;
import witnessmark.logbook.Desk;
import witnessmark.logbook.SampleSeason;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.logbook.port.Settings;
import witnessmark.logbook.port.Story;
import witnessmark.outcome.Outcome;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;
import witnessmark.store.TimeOrderedIds;

/** The sample season on a real file in a test's folder. */
public final class SampleBooks {
    /** The season folder the repository ships. */
    public static final Path FOLDER = Path.of(System.getProperty("project.basedir", "."), "sample-season");

    private static final String FILE = "sample-season.witness";
    private static final Instant NOW = Instant.parse("2026-07-08T18:00:00Z");

    private final SampleSeason sample;
    private final Path folder;

    public SampleBooks(Path folder) {
        this.folder = folder;
        Map<String, String> kept = new HashMap<>();
        Settings settings = new Settings() {
            @Override
            public Optional<String> get(String key) {
                return Optional.ofNullable(kept.get(key));
            }

            @Override
            public void put(String key, String value) {
                kept.put(key, value);
            }
        };
        InstantSource clock = InstantSource.fixed(NOW);
        this.sample = new SampleSeason(
                new SqliteLogbookFiles(
                        folder.resolve("data"), clock::millis, () -> "test-device", new Holder("h", "p")),
                new CsvSeasonFolders(),
                new JsonStories(),
                settings,
                clock,
                folder);
    }

    public SampleSeason season() {
        return sample;
    }

    /** The working copy, as of 8 July 2026 unless chapters were told. */
    public Desk open() {
        Path file = folder.resolve(FILE);
        if (!Files.exists(file)) {
            place(Made.ONCE, file);
        }
        return sample.open(FOLDER, "Team engineer").orThrow();
    }

    /** The same before any trace was brought in: those of the sample are struck out, with what was written for them. */
    public Desk untraced() {
        Path file = folder.resolve(FILE);
        if (!Files.exists(file)) {
            place(Untraced.ONCE, file);
            return open();
        }
        Desk desk = open();
        strikeTraces(desk);
        return desk;
    }

    /** Takes the traces of a sample out, so that its files can be brought in anew. */
    public static void strikeTraces(Desk desk) {
        List<Entry<?>> struck = new ArrayList<>();
        for (Class<? extends Fact> kind :
                List.of(Trace.class, TraceMark.class, LoggerForm.class, LoggerFigures.class, RevExponent.class)) {
            desk.view().facts().of(kind).inForce().map(SampleBooks::struck).forEach(struck::add);
        }
        desk.write("traces of the sample taken out", struck).orThrow();
    }

    private static <F extends Fact> Entry<F> struck(Entry<F> entry) {
        return new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, "to be brought in anew", entry.rev() + 1);
    }

    /**
     * What the program makes of the folder the first time, and the backup it makes of that on closing: reading and
     * copying all of it again for every test would take minutes.
     */
    private void place(PlacedBook made, Path file) {
        try {
            Files.createDirectories(folder);
            made.put(folder, file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The working copy as the program made it from the season folder, and its first backup, once for all tests. */
    private static final class Made {
        static final PlacedBook ONCE =
                made(books -> books.sample.open(FOLDER, "Team engineer").orThrow());
    }

    /** The same without its traces. */
    private static final class Untraced {
        static final PlacedBook ONCE = made(books -> {
            Desk desk = books.open();
            strikeTraces(desk);
            return desk;
        });
    }

    private static PlacedBook made(Function<SampleBooks, Desk> how) {
        try {
            Path folder = Files.createTempDirectory("sample-made");
            how.apply(new SampleBooks(folder)).logbook().close();
            return PlacedBook.takenFrom(folder, folder.resolve(FILE))
                    .writtenAt(FileTime.from(NOW.minusSeconds(1)))
                    .backedUpAt(NOW);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Tells every chapter that is left. */
    public void tellAll(Desk desk) {
        Optional<Story.Chapter> next = sample.nextChapter(FOLDER);
        while (next.isPresent()) {
            sample.walkOn(desk, next.get(), next.get().name()).orThrow();
            next = sample.nextChapter(FOLDER);
        }
    }

    public static TimeOrderedIds ids() {
        return new TimeOrderedIds();
    }

    /** The bytes kept beside the records of a part of the sample. */
    public static SeasonFolders.Bytes kept(Path folder) {
        return sha256 -> Outcome.worked(new CsvSeasonFolders()
                .beside(folder, Set.of(sha256)).whole().stream().findFirst());
    }

    /** The rows of an expected table, heading left out. */
    static List<String[]> table(String name) {
        try (InputStream in = SampleBooks.class.getResourceAsStream("/sample/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
