package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextsTest {
    private static final Pattern BLANK = Pattern.compile("\\{([0-9]+)[,}]");
    private final Texts texts = Texts.in(Locale.UK);
    private final Texts pseudo = Texts.pseudo();

    @Test
    void every_sentence_is_a_pattern_whose_apostrophes_are_doubled() {
        for (String key : texts.keys()) {
            String pattern = texts.pattern(key);
            assertThat(pattern.replace("''", "")).as(key).doesNotContain("'");
            assertThatCode(() -> new MessageFormat(pattern, Locale.UK)).as(key).doesNotThrowAnyException();
        }
    }

    @Test
    void the_blanks_of_a_sentence_are_numbered_from_nothing_without_a_gap_unless_shared_by_parts() {
        for (String key : texts.keys()) {
            if (!key.startsWith("problems.")) {
                Set<String> blanks = blanks(texts.pattern(key));
                for (int i = 0; i < blanks.size(); i++) {
                    assertThat(blanks).as(key).contains(Integer.toString(i));
                }
            }
        }
    }

    @Test
    void the_pseudo_language_keeps_blanks_and_apostrophes_and_is_longer() {
        assertThat(pseudo.keys()).isEqualTo(texts.keys());
        for (String key : texts.keys()) {
            assertThat(blanks(pseudo.pattern(key))).as(key).isEqualTo(blanks(texts.pattern(key)));
            assertThat(pseudo.pattern(key).replace("''", "")).as(key).doesNotContain("'");
            assertThat(pseudo.pattern(key))
                    .as(key)
                    .startsWith("[")
                    .endsWith("]")
                    .hasSizeGreaterThan(texts.pattern(key).length());
        }
    }

    @Test
    void the_pseudo_language_can_say_everything() {
        Measures measures = new Measures(pseudo, Units.METRIC);
        assertThat(measures.speed(new witnessmark.quantity.EngineSpeed(9150))).contains("9\u2009150");
        assertThat(new Problems(pseudo, measures)
                        .sentence(witnessmark.outcome.Problem.of(witnessmark.outcome.ProblemKind.DUPLICATE, "K05")))
                .contains("'K05'");
    }

    @Test
    void a_blank_is_filled_and_an_apostrophe_shown_once() {
        assertThat(texts.get("problems.duplicate.what", "K05")).isEqualTo("'K05' is there twice.");
        assertThat(texts.get("problems.disk_full.what", "a.witness"))
                .isEqualTo("Couldn't save to a.witness: the disk is full.");
    }

    /** As everywhere else: the thousands stand apart by a thin space, inside the words a number chooses too. */
    @ParameterizedTest
    @CsvSource({"1, 1 row is", "12, 12 rows are", "1103, 1\u2009103 rows are", "1234567, 1\u2009234\u2009567 rows are"})
    void a_whole_number_in_a_sentence_is_shown_as_figures_are(int rows, String said) {
        assertThat(texts.get("beforewego.import.same", rows)).startsWith(said);
    }

    @Test
    void a_key_that_is_not_there_is_refused_by_name() {
        assertThatThrownBy(() -> texts.get("problems.nowhere"))
                .isInstanceOf(MissingResourceException.class)
                .hasMessageContaining("problems.nowhere");
        assertThat(texts.has("problems.nowhere")).isFalse();
        assertThat(texts.has("problems.needed.what")).isTrue();
    }

    private static Set<String> blanks(String pattern) {
        Set<String> blanks = new TreeSet<>();
        BLANK.matcher(pattern).results().forEach(blank -> blanks.add(blank.group(1)));
        return blanks;
    }

    /** A sentence that is asked for by a whole key and is not there would be missed only by whoever asks for it. */
    @Test
    void every_key_the_program_names_whole_has_its_sentence() throws IOException {
        Texts english = Texts.in(Locale.UK);
        Pattern named = Pattern.compile("\\bget\\(\\s*\"([a-z][A-Za-z_]*(?:\\.[A-Za-z0-9_]+)+)\"\\s*[,)]");
        Set<String> missing = new TreeSet<>();
        int asked = 0;
        Path sources = Path.of(System.getProperty("project.basedir", "."), "src/main/java");
        try (Stream<Path> files = Files.walk(sources)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                Matcher matcher = named.matcher(Files.readString(file));
                while (matcher.find()) {
                    boolean sentence = Texts.BUNDLES.contains(matcher.group(1).replaceFirst("\\..*", ""));
                    asked += sentence ? 1 : 0;
                    if (sentence && !english.has(matcher.group(1))) {
                        missing.add(matcher.group(1) + " in " + file.getFileName());
                    }
                }
            }
        }
        assertThat(missing).isEmpty();
        assertThat(asked)
                .as("keys seen, so that a changed habit cannot pass in silence")
                .isGreaterThan(1_000);
    }
}
