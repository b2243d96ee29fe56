package witnessmark.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Java sources as the compiler's own parser sees them. */
final class JavaSources {
    private final List<CompilationUnitTree> units;
    private final SourcePositions positions;

    private JavaSources(List<CompilationUnitTree> units, SourcePositions positions) {
        this.units = units;
        this.positions = positions;
    }

    static JavaSources main() {
        return parse(SourceTree.files("src/main/java", ".java"));
    }

    static JavaSources all() {
        return parse(Stream.of("src/main/java", "src/test/java")
                .flatMap(folder -> SourceTree.files(folder, ".java").stream())
                .toList());
    }

    /** Everything that a scanner reports for these sources, in order. */
    List<String> scan(SourceScanner scanner) {
        List<String> found = new ArrayList<>();
        for (CompilationUnitTree unit : units) {
            scanner.scan(unit, new SourceScanner.Report(unit, positions, found::add));
        }
        return found;
    }

    private static JavaSources parse(List<Path> paths) {
        JavaCompiler compiler = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler(), "a JDK runs the tests");
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(paths));
            List<CompilationUnitTree> units = new ArrayList<>();
            task.parse().forEach(units::add);
            return new JavaSources(List.copyOf(units), Trees.instance(task).getSourcePositions());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
