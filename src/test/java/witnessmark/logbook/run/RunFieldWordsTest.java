package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

class RunFieldWordsTest {
    @Test
    void every_field_of_the_run_sheet_has_a_word_of_its_own() {
        RecordWords words = new RecordWords(Texts.in(Locale.UK));
        List<String> all = Arrays.stream(RunField.values()).map(words::word).toList();
        assertThat(all).doesNotHaveDuplicates().noneMatch(String::isBlank);
    }

    @Test
    void no_field_has_a_word_that_is_not_asked_for() {
        long keys = Texts.in(Locale.UK).keys().stream()
                .filter(key -> key.startsWith("records.run_field."))
                .count();
        assertThat(keys).isEqualTo(RunField.values().length);
    }
}
