package witnessmark.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Every statement has a comment, a use, and tables that fit it. A query is {@code sql/query/<noun>/<verb>.sql}. A
 * record table has insert, update and all, found by that convention; any other is named in the program as
 * "noun/verb".
 */
class SqlFilesTest {
    private static final Set<String> BY_CONVENTION = Set.of("insert", "update", "all");
    private static final Pattern COMMENT_OR_TEXT = Pattern.compile("(?s)--[^\n]*|/\\*.*?\\*/|'(?:[^']|'')*'");

    @Test
    void every_file_is_a_schema_step_or_a_query() {
        assertThat(SourceTree.files("sql", ""))
                .map(SourceTree::shown)
                .allSatisfy(path -> assertThat(path.replace('\\', '/'))
                        .matches("sql/(schema/V\\d{3}__\\w+|query/[a-z_]+/[a-z_]+)\\.sql"));
    }

    @Test
    void every_file_opens_with_a_comment() {
        assertThat(SourceTree.files("sql", ".sql"))
                .allSatisfy(path -> assertThat(SourceTree.text(path))
                        .as(SourceTree.shown(path))
                        .matches("(?s)-- \\S.*"));
    }

    @Test
    void every_query_is_one_statement() {
        assertThat(queries())
                .allSatisfy(path ->
                        assertThat(bare(path)).as(SourceTree.shown(path)).matches("(?s)[^;]*;?\\s*"));
    }

    @Test
    void every_query_prepares_against_a_fresh_schema() throws SQLException {
        try (FreshSchema schema = FreshSchema.open()) {
            assertThat(queries())
                    .allSatisfy(path -> assertThatCode(() -> schema.prepare(SourceTree.text(path)))
                            .as(SourceTree.shown(path))
                            .doesNotThrowAnyException());
        }
    }

    @Test
    void every_query_is_used() throws SQLException {
        String program = SourceTree.files("src/main/java", ".java").stream()
                .map(SourceTree::text)
                .collect(Collectors.joining());
        Set<String> tables;
        try (FreshSchema schema = FreshSchema.open()) {
            tables = schema.tables();
        }
        assertThat(queries())
                .allSatisfy(path -> assertThat(named(path))
                        .as("a record table's own, or written in the program as \"noun/verb\"")
                        .matches(name -> isByConvention(path, tables) || program.contains("\"" + name + "\"")));
    }

    @Test
    void a_script_with_a_trigger_runs_whole() throws SQLException {
        try (FreshSchema schema = FreshSchema.open()) {
            schema.run("""
                    CREATE TABLE probe (n INTEGER);
                    CREATE TRIGGER probe_added AFTER INSERT ON probe BEGIN
                      DELETE FROM probe WHERE n < 0; DELETE FROM probe WHERE n > 9;
                    END;
                    CREATE TABLE probe_after (n INTEGER);
                    """);
            assertThat(schema.tables()).contains("probe", "probe_after");
        }
    }

    private static List<Path> queries() {
        return SourceTree.files("sql/query", ".sql");
    }

    private static boolean isByConvention(Path path, Set<String> tables) {
        return BY_CONVENTION.contains(verb(path)) && tables.contains(noun(path));
    }

    private static String named(Path path) {
        return noun(path) + "/" + verb(path);
    }

    private static String noun(Path path) {
        return path.getParent().getFileName().toString();
    }

    private static String verb(Path path) {
        return path.getFileName().toString().replace(".sql", "");
    }

    private static String bare(Path path) {
        return COMMENT_OR_TEXT.matcher(SourceTree.text(path)).replaceAll("").strip();
    }
}
