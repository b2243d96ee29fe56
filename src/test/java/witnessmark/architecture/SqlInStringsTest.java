package witnessmark.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Statements live in commented files under sql, where they can be read, counted and prepared. */
class SqlInStringsTest {
    /** Words in capitals anywhere, or in small letters when the string begins with them; a sentence may say "select". */
    private static final Pattern SQL = Pattern.compile(
            "(?s)\\bSELECT\\b.*\\bFROM\\b|\\bINSERT\\s+(OR\\s+\\w+\\s+)?INTO\\b"
                    + "|\\bUPDATE\\b.*\\bSET\\b|\\bDELETE\\s+FROM\\b|\\b(CREATE|ALTER|DROP)\\s+(\\w+\\s+)?(TABLE|INDEX|TRIGGER|VIEW)\\b"
                    + "|\\bPRAGMA\\b|\\bVACUUM\\b|\\bBEGIN\\s+(IMMEDIATE|EXCLUSIVE)\\b"
                    + "|^\\s*(select\\s.*\\sfrom\\s|insert\\s+(or\\s+\\w+\\s+)?into\\s|update\\s.*\\sset\\s|delete\\s+from\\s"
                    + "|(create|alter|drop)\\s+(\\w+\\s+)?(table|index|trigger|view)\\s|pragma\\s|vacuum\\b|begin\\s+(immediate|exclusive))");

    @Test
    void no_statement_is_written_in_a_java_string() {
        assertThat(JavaSources.main().scan(new Statements())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SELECT id FROM run",
                "select id\nfrom run",
                "INSERT OR REPLACE INTO run VALUES (?)",
                "update run set note = ?",
                "DELETE FROM run",
                "CREATE TEMP TABLE t (a)",
                "PRAGMA user_version"
            })
    void a_statement_is_known_when_seen(String statement) {
        assertThat(SQL.matcher(statement).find()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Select the part from the shelf",
                "The run was not saved: delete it from the list or set its time",
                "Update the reading, then set the limit"
            })
    void a_sentence_is_not_taken_for_a_statement(String sentence) {
        assertThat(SQL.matcher(sentence).find()).isFalse();
    }

    /** Joins what {@code +} joins, so that a statement cannot hide in pieces. */
    private static final class Statements extends SourceScanner {
        @Override
        public @Nullable Void visitBinary(BinaryTree binary, Report report) {
            String text = joined(binary);
            if (SQL.matcher(text).find()) {
                report.found(binary, text);
                return null;
            }
            return super.visitBinary(binary, report);
        }

        @Override
        public @Nullable Void visitLiteral(LiteralTree literal, Report report) {
            String text = joined(literal);
            if (SQL.matcher(text).find()) {
                report.found(literal, text);
            }
            return super.visitLiteral(literal, report);
        }

        private static String joined(ExpressionTree tree) {
            if (tree instanceof LiteralTree literal && literal.getValue() instanceof String text) {
                return text;
            }
            if (tree instanceof ParenthesizedTree inner) {
                return joined(inner.getExpression());
            }
            if (tree instanceof BinaryTree binary && binary.getKind() == Tree.Kind.PLUS) {
                return joined(binary.getLeftOperand()) + joined(binary.getRightOperand());
            }
            return " ";
        }
    }
}
