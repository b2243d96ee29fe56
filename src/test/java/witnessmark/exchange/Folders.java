package witnessmark.exchange;

import com.fasterxml.uuid.Generators;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;

/** Folders as tests look at them. */
final class Folders {
    private Folders() {}

    /** Season folders with new ids as in the program, on a disk nobody waits for. */
    static CsvSeasonFolders unsynced() {
        return new CsvSeasonFolders(Generators.timeBasedEpochGenerator()::generate, new UnsyncedDisk());
    }

    /** The text of every file by name. */
    static SortedMap<String, String> texts(Path folder) {
        SortedMap<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return texts;
    }

    /** All entries of facts, kind by kind, each in the order of ids. */
    static List<Entry<?>> entries(Facts facts) {
        List<Entry<?>> all = new ArrayList<>();
        for (RecordType<?> type : RecordTypes.all()) {
            all.addAll(ofKind(facts, type));
        }
        return all;
    }

    private static <F extends Fact> List<Entry<F>> ofKind(Facts facts, RecordType<F> type) {
        return facts.of(type.kind()).all().stream()
                .sorted(Comparator.comparing(Entry::id))
                .toList();
    }

    /** The id of a row of the small season. */
    static String id(int number) {
        return "01976c2e-0000-7000-8000-%012d".formatted(number);
    }
}
