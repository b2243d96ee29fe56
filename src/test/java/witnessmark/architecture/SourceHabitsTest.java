package witnessmark.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CatchTree;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Habits of the house that only the sources show. */
class SourceHabitsTest {
    @Test
    void no_failure_is_swallowed_by_an_empty_catch() {
        assertThat(JavaSources.all().scan(new EmptyCatches())).isEmpty();
    }

    @Test
    void every_package_has_a_front_page_and_refuses_nulls() {
        List<Path> packages = SourceTree.files("src/main/java", ".java").stream()
                .map(Path::getParent)
                .distinct()
                .toList();

        assertThat(packages).allSatisfy(folder -> {
            Path front = folder.resolve("package-info.java");
            assertThat(Files.exists(front)).as(SourceTree.shown(front)).isTrue();
            assertThat(SourceTree.text(front))
                    .as(SourceTree.shown(front))
                    .startsWith("/**")
                    .contains("@NullMarked", "org.jspecify.annotations.NullMarked");
        });
    }

    @Test
    void every_file_with_tests_has_a_name_that_the_build_runs() {
        assertThat(SourceTree.files("src/test/java", ".java"))
                .filteredOn(path -> Pattern.compile("(?m)^\\s*@(Test|ParameterizedTest|TestFactory|ArchTest)\\b")
                        .matcher(SourceTree.text(path))
                        .find())
                .allSatisfy(path -> assertThat(SourceTree.shown(path)).endsWith("Test.java"));
    }

    private static final class EmptyCatches extends SourceScanner {
        @Override
        public @Nullable Void visitCatch(CatchTree caught, Report report) {
            if (caught.getBlock().getStatements().isEmpty()) {
                report.found(caught, "empty catch of " + caught.getParameter().getType());
            }
            return super.visitCatch(caught, report);
        }
    }
}
