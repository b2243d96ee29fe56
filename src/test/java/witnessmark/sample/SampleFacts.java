package witnessmark.sample;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.exchange.CsvSeasonFolders;

/** The rows of the sample season, read from its folder once for all tests, which nobody can change. */
public final class SampleFacts {
    private static final class Opening {
        private static final List<Entry<?>> ROWS = List.copyOf(
                new CsvSeasonFolders().read(SampleBooks.FOLDER, Facts.none()).orThrow());

        private static final Facts FACTS = Facts.none().with(ROWS);
    }

    private static final class End {
        private static final Facts FACTS = told();

        private static Facts told() {
            CsvSeasonFolders folders = new CsvSeasonFolders();
            Facts facts = Opening.FACTS;
            try (Stream<Path> later = Files.list(SampleBooks.FOLDER.resolve("later"))) {
                for (Path chapter : later.filter(Files::isDirectory).sorted().toList()) {
                    facts = facts.with(folders.read(chapter, facts).orThrow());
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return facts;
        }
    }

    private SampleFacts() {}

    /** The rows of the folder that it opens with. */
    public static List<Entry<?>> rows() {
        return Opening.ROWS;
    }

    /** As it opens. */
    public static Facts opening() {
        return Opening.FACTS;
    }

    /** Told to its end. */
    public static Facts end() {
        return End.FACTS;
    }
}
