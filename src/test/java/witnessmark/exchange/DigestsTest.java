package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The published example: NIST, FIPS 180-4 examples, SHA-256 of "abc". */
class DigestsTest {
    @Test
    void of_the_example(@TempDir Path folder) throws IOException {
        assertThat(Digests.of(Files.writeString(folder.resolve("abc"), "abc")))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
