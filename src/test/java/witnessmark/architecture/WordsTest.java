package witnessmark.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.LiteralTree;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Words that say work was left undone, and words that the trade does not use. */
class WordsTest {
    private static final Words UNFINISHED = Words.listed("unfinished-words.txt");
    private static final Words NOT_SHOWN = Words.listed("words-not-shown.txt");

    @Test
    void nothing_says_it_is_unfinished() {
        assertThat(Stream.of(
                                SourceTree.files("src/main/java", ".java"),
                                SourceTree.files("src/main/resources", ".properties"),
                                SourceTree.files("src/test/java", ".java"),
                                SourceTree.files("sql", ".sql"))
                        .flatMap(List::stream)
                        .flatMap(path -> UNFINISHED.in(SourceTree.text(path)).stream()
                                .map(word -> SourceTree.shown(path) + ": " + word)))
                .isEmpty();
    }

    @Test
    void no_string_of_the_program_uses_a_word_that_is_not_the_trades() {
        assertThat(JavaSources.main().scan(new ForeignWords())).isEmpty();
    }

    @Test
    void no_sentence_uses_a_word_that_is_not_the_trades_or_shouts() throws IOException {
        for (var path : SourceTree.files("src/main/resources/i18n", ".properties")) {
            Properties sentences = new Properties();
            sentences.load(new StringReader(SourceTree.text(path)));
            sentences.forEach((key, sentence) -> {
                assertThat(NOT_SHOWN.in((String) sentence))
                        .as("%s, %s", SourceTree.shown(path), key)
                        .isEmpty();
                assertThat((String) sentence)
                        .as("%s, %s", SourceTree.shown(path), key)
                        .doesNotContain("!");
            });
        }
    }

    private static final class ForeignWords extends SourceScanner {
        @Override
        public @Nullable Void visitLiteral(LiteralTree literal, Report report) {
            if (literal.getValue() instanceof String text) {
                NOT_SHOWN.in(text).forEach(word -> report.found(literal, "\"" + word + "\""));
            }
            return super.visitLiteral(literal, report);
        }
    }
}
