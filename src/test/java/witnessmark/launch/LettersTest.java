package witnessmark.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.UiTest;
import witnessmark.sample.SampleBooks;

/** With Alt held, each letter of the whole window means one thing: a button never takes a menu's. */
@UiTest(display = true)
class LettersTest {
    @TempDir
    Path folder;

    @Test
    void no_letter_is_claimed_twice_anywhere() throws Exception {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Dwitnessmark.data=" + folder.resolve("data"),
                        "-Dwitnessmark.sample=" + SampleBooks.FOLDER.toAbsolutePath(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        LettersProgram.class.getName())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        if (!program.waitFor(90, TimeUnit.SECONDS)) {
            program.destroyForcibly().waitFor();
        }
        List<String> said = Files.readAllLines(out, StandardCharsets.UTF_8);
        assertThat(said)
                .as("the program's own words: %s", Files.readString(err, StandardCharsets.UTF_8))
                .containsExactly("done");
    }
}
