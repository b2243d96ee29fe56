package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaptionTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "&Save run, Save run, 0",
        "Running &time, Running time, 8",
        "No letter, No letter, -1",
        "Nuts && bolts, Nuts & bolts, -1",
        "Nuts && &bolts, Nuts & bolts, 7",
        "&Two &letters, Two letters, 0",
        "At the end&, At the end&, -1"
    })
    void the_letter_follows_the_sign_and_a_doubled_sign_is_itself(String pattern, String text, int letter) {
        assertThat(Caption.of(pattern)).isEqualTo(new Caption(text, letter));
    }

    @Test
    void the_letter_becomes_a_key_where_the_platform_has_one() {
        if (com.formdev.flatlaf.util.SystemInfo.isMacOS) {
            assertThat(Caption.of("&Save").mnemonic()).isZero();
        } else {
            assertThat(Caption.of("&Save").mnemonic()).isEqualTo(KeyEvent.VK_S);
        }
        assertThat(Caption.of("Save").mnemonic()).isZero();
    }
}
