package witnessmark.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** The checkout under test, as files. */
final class SourceTree {
    private SourceTree() {}

    static Path root() {
        return Path.of(property("project.basedir"));
    }

    /** All files under a folder whose name ends so, in order of path; none when there is no such folder. */
    static List<Path> files(String folder, String ending) {
        Path start = root().resolve(folder);
        if (!Files.isDirectory(start)) {
            return List.of();
        }
        try (Stream<Path> paths = Files.walk(start)) {
            return paths.filter(Files::isRegularFile)
                    .filter(path -> path.toString().endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The path as people write it in a message. */
    static String shown(Path path) {
        return root().relativize(path).toString();
    }

    /** A property that the build hands to the tests. */
    static String property(String name) {
        return Objects.requireNonNull(System.getProperty(name), () -> "the build sets the property " + name);
    }
}
