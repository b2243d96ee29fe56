package witnessmark.sample;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.exchange.JsonStories;
import witnessmark.logbook.Desk;
import witnessmark.logbook.SampleSeason;
import witnessmark.logbook.port.Settings;
import witnessmark.logbook.port.Story;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;
import witnessmark.store.TimeOrderedIds;

/** The sample season on a real file in a test's folder. */
public final class SampleBooks {
    /** The season folder the repository ships. */
    public static final Path FOLDER = Path.of(System.getProperty("project.basedir", "."), "sample-season");

    private final SampleSeason sample;

    public SampleBooks(Path folder) {
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
        InstantSource clock = InstantSource.fixed(Instant.parse("2026-07-08T18:00:00Z"));
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
        return sample.open(FOLDER, "Team engineer").orThrow();
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
