package witnessmark.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.UiTest;

/** With Alt held, each letter of the whole window means one thing: a button never takes a menu's. */
@UiTest(display = true)
class LettersTest {
    @TempDir
    Path folder;

    @Test
    void no_letter_is_claimed_twice_anywhere() throws Exception {
        Shipped said = Shipped.through(LettersProgram.class, folder);
        assertThat(said.lines())
                .as("the program's own words: %s", said.errors())
                .containsExactly("done");
    }
}
