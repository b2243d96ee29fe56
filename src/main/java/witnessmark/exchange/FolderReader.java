package witnessmark.exchange;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Reads one season folder, kind by kind, each after those it refers to. */
final class FolderReader {
    private static final int MOST_FILES = 10_000;

    private final Path folder;
    private final Reading reading;
    private final Problems problems;

    FolderReader(Path folder, Reading reading) {
        this.folder = folder;
        this.reading = reading;
        this.problems = reading.problems();
    }

    Outcome<List<Entry<?>>> read() {
        if (!Files.exists(folder)) {
            return Outcome.didNot(Problem.of(ProblemKind.NO_SUCH_FILE, folder.toString()));
        }
        if (!Files.isDirectory(folder)) {
            return notOne();
        }
        Set<String> tables;
        try {
            tables = tables();
        } catch (IOException | DirectoryIteratorException e) {
            return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, folder.toString(), SystemWords.of(e)));
        }
        if (Files.exists(folder.resolve(SeasonIndex.FILE))) {
            return SeasonIndex.read(folder, problems).then(index -> read(tables, index.rows()));
        }
        boolean handMade = RecordTypes.all().stream().anyMatch(type -> tables.contains(type.file()));
        return handMade ? read(tables, null) : notOne();
    }

    private Outcome<List<Entry<?>>> read(Set<String> tables, @Nullable Map<String, Integer> stated) {
        for (String table : tables) {
            boolean known = stated == null ? isOurs(table) : stated.containsKey(table);
            if (!known) {
                problems.beginFile(table);
                problems.inFile(ProblemKind.FILE_UNKNOWN, Limits.shown(table));
            }
        }
        for (RecordType<?> type : RecordTypes.all()) {
            boolean there = tables.contains(type.file());
            boolean listed = stated == null ? there : stated.containsKey(type.file());
            if (!listed) {
                unlisted(type, there);
            } else if (!problems.full()) {
                problems.beginFile(type.file());
                if (there) {
                    read(type, stated == null ? null : stated.get(type.file()));
                } else {
                    problems.inFile(ProblemKind.FILE_MISSING, type.file());
                    reading.told().met(stated == null ? 0 : stated.getOrDefault(type.file(), 0));
                    reading.leftOut().table(type.kind());
                }
            }
        }
        for (String missed : reading.leftOut().missed()) {
            problems.beginFile(missed);
            problems.inFile(ProblemKind.FILE_MISSING, missed);
        }
        return problems.outcome(
                List.copyOf(reading.toWrite()), reading.leftOut().counted());
    }

    private void unlisted(RecordType<?> type, boolean there) {
        if (there) {
            reading.leftOut().table(type.kind());
        } else if (reading.known().of(type.kind()).size() == 0) {
            reading.leftOut().absent(type.kind());
        }
    }

    private <F extends Fact> void read(RecordType<F> type, @Nullable Integer stated) {
        FileRows<F> file = new FileRows<>(type, folder.resolve(type.file()), stated, reading);
        List<Row> rows = file.read();
        reading.told().met(file.met());
        rows.forEach(row -> reading.told().stands(row.id(), problems.place(row.line(), null)));
        if (!problems.full()) {
            new Settling<>(type, reading).settle(rows);
        }
    }

    /** The text tables of the folder, by name. What a system hides by a leading dot is nobody's work. */
    private Set<String> tables() throws IOException {
        Set<String> names = new TreeSet<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                String name = String.valueOf(path.getFileName());
                if (name.toLowerCase(Locale.ROOT).endsWith(".csv") && !name.startsWith(".")) {
                    names.add(name);
                }
                if (names.size() > MOST_FILES) {
                    throw new IOException("more than " + MOST_FILES + " tables");
                }
            }
        }
        return names;
    }

    /** The folder that was meant often lies in the one that was chosen. */
    private Outcome<List<Entry<?>>> notOne() {
        List<String> within = within();
        if (within.size() == 1) {
            return Outcome.didNot(Problem.of(ProblemKind.SEASON_FOLDER_WITHIN, folder.toString(), within.get(0)));
        }
        return Outcome.didNot(Problem.of(ProblemKind.NOT_A_SEASON_FOLDER, folder.toString()));
    }

    private List<String> within() {
        List<String> within = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return within;
        }
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                if (within.size() < 2 && Files.isRegularFile(path.resolve(SeasonIndex.FILE))) {
                    within.add(String.valueOf(path.getFileName()));
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            return List.of(); // it is no season folder whatever is in it
        }
        return within;
    }

    private static boolean isOurs(String table) {
        return RecordTypes.all().stream().anyMatch(type -> type.file().equals(table));
    }
}
