package witnessmark.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import java.util.List;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Files and methods stay short enough to be read at one sitting. */
class LengthsTest {
    private static final Logger LOG = Logger.getLogger(LengthsTest.class.getName());
    private static final int LONGEST_FILE = 500;
    private static final int LONGEST_METHOD = 60;

    @Test
    void no_file_is_longer_than_500_lines() {
        assertThat(JavaSources.all().scan(new LongFiles())).isEmpty();
    }

    @Test
    void no_method_is_longer_than_60_lines() {
        assertThat(JavaSources.all().scan(new LongMethods())).isEmpty();
    }

    @Test
    void stated_exceptions_are_counted_and_few() {
        List<String> exceptions = JavaSources.all().scan(new Exceptions());
        LOG.info(() -> "stated exceptions from the length rules: %d %s".formatted(exceptions.size(), exceptions));
        assertThat(exceptions).hasSizeLessThanOrEqualTo(10);
    }

    @Test
    void files_of_the_program_are_short_as_a_rule() {
        List<Long> lengths = SourceTree.files("src/main/java", ".java").stream()
                .map(path -> SourceTree.text(path).lines().count())
                .sorted()
                .toList();
        long median = lengths.get(lengths.size() / 2);
        long p95 = lengths.get(lengths.size() * 95 / 100);
        LOG.info(() -> "length of the program's %d files: median %d, 95th percentile %d lines"
                .formatted(lengths.size(), median, p95));
        assertThat(median).as("median length of %d files", lengths.size()).isLessThanOrEqualTo(150);
        assertThat(p95).as("95th percentile").isLessThan(350);
    }

    private static final class LongFiles extends SourceScanner {
        @Override
        public @Nullable Void visitCompilationUnit(CompilationUnitTree unit, Report report) {
            boolean excepted = unit.getTypeDecls().stream()
                    .anyMatch(type -> type instanceof ClassTree tree && LengthException.on(tree.getModifiers()));
            long lines = report.text().lines().count();
            if (lines > LONGEST_FILE && !excepted) {
                report.found(unit, lines + " lines");
            }
            return null;
        }
    }

    private static final class LongMethods extends SourceScanner {
        @Override
        public @Nullable Void visitMethod(MethodTree method, Report report) {
            if (report.lines(method) > LONGEST_METHOD && !LengthException.on(method.getModifiers())) {
                report.found(method, "%s has %d lines".formatted(method.getName(), report.lines(method)));
            }
            return super.visitMethod(method, report);
        }
    }

    private static final class Exceptions extends SourceScanner {
        @Override
        public @Nullable Void visitAnnotation(AnnotationTree annotation, Report report) {
            if (LengthException.is(annotation)) {
                report.found(annotation, annotation.toString());
            }
            return super.visitAnnotation(annotation, report);
        }
    }
}
