package witnessmark.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** The files of a season folder, to be spoilt in one place or another. */
final class SeasonText {
    private static final SeasonText SMALL =
            of(Path.of(System.getProperty("project.basedir"), "src/test/resources/exchange/small-season"));

    private final SortedMap<String, byte[]> files = new TreeMap<>();

    /** A small season with rows of every kind. */
    static SeasonText small() {
        SeasonText season = new SeasonText();
        season.files.putAll(SMALL.files);
        return season;
    }

    /** Nothing yet. */
    static SeasonText empty() {
        return new SeasonText();
    }

    static SeasonText of(Path folder) {
        SeasonText season = new SeasonText();
        Folders.texts(folder).forEach(season::text);
        return season;
    }

    SortedMap<String, byte[]> files() {
        return files;
    }

    String text(String file) {
        return new String(files.get(file), StandardCharsets.UTF_8);
    }

    SeasonText text(String file, String text) {
        return bytes(file, text.getBytes(StandardCharsets.UTF_8));
    }

    SeasonText bytes(String file, byte[] bytes) {
        files.put(file, bytes);
        return this;
    }

    SeasonText without(String file) {
        if (files.remove(file) == null) {
            throw new AssertionError("no " + file);
        }
        return this;
    }

    /** As a person makes it, who knows nothing of season.json. */
    SeasonText handMade() {
        return without(SeasonIndex.FILE);
    }

    /** Replaces a text that must be there. */
    SeasonText replace(String file, String old, String next) {
        String text = text(file);
        if (!text.contains(old)) {
            throw new AssertionError("no '" + old + "' in " + text);
        }
        return text(file, text.replace(old, next));
    }

    /** Changes a table. */
    SeasonText grid(String file, Consumer<Grid> change) {
        Grid grid = Grid.parse(text(file));
        change.accept(grid);
        return text(file, grid.text());
    }

    /** Puts a text in a field; rows count from 1 after the heading. */
    SeasonText cell(String file, int row, String heading, String text) {
        return grid(file, grid -> grid.rows().get(row).set(grid.column(heading), text));
    }

    /** Takes a column away. */
    SeasonText withoutColumn(String file, String heading) {
        return grid(file, grid -> {
            int at = grid.column(heading);
            grid.rows().forEach(row -> row.remove(at));
        });
    }

    /** Adds lines at the end of a table. */
    SeasonText add(String file, String... lines) {
        return text(
                file, text(file) + Arrays.stream(lines).map(line -> line + "\n").collect(Collectors.joining()));
    }

    /** Writes the folder. */
    Path in(Path folder) {
        try {
            Files.createDirectories(folder);
            for (var file : files.entrySet()) {
                Files.write(folder.resolve(file.getKey()), file.getValue());
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return folder;
    }
}
