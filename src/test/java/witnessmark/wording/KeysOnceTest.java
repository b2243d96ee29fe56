package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A key that stands twice in a bundle silently says the later of its two sentences in both places. */
class KeysOnceTest {
    static List<String> bundles() {
        return Texts.BUNDLES;
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void every_key_of_a_bundle_stands_once(String bundle) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(getClass().getResourceAsStream("/i18n/" + bundle + ".properties"), bundle)) {
            Set<String> seen = new HashSet<>();
            List<String> twice = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.matches("[a-z][^#=\\s]*\\s*=.*"))
                    .map(line -> line.replaceFirst("\\s*=.*", ""))
                    .filter(key -> !seen.add(key))
                    .toList();
            assertThat(twice).isEmpty();
        }
    }
}
