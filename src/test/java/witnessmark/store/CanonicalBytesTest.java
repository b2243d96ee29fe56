package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * The check's own way to put canonical texts together and over each other comes to what a JSON library writes and reads
 * (Jackson, through {@link Canonical}).
 */
class CanonicalBytesTest {
    private static final long SEED = 20_260_708L;
    private static final int TEXTS = 3_000;
    private static final String LETTERS =
            "aZ09 _-\"\\/\b\t\n\f\r\u0000\u0001\u001f\u007f\u00e9\u20ac\ud83d\udd27{}[]:,<";

    private final Canonical canonical = new Canonical();
    private final CanonicalBytes bytes = new CanonicalBytes();
    private final Random random = new Random(SEED);

    @Test
    void the_same_values_make_the_same_text_and_the_same_hash() {
        for (int i = 0; i < TEXTS; i++) {
            Map<String, @Nullable Object> values = values(random.nextInt(8));

            byte[] hash = put(values);

            String text = canonical.text(values);
            assertThat(new String(bytes.copy(), StandardCharsets.UTF_8))
                    .as("seed %d, text %d", SEED, i)
                    .isEqualTo(text);
            assertThat(HexFormat.of().formatHex(hash)).isEqualTo(canonical.hash(text));
            assertThat(CanonicalBytes.isHex(hash, utf8(canonical.hash(text)))).isTrue();
        }
    }

    @Test
    void a_hash_is_no_other_hash_and_no_other_spelling_of_itself() {
        byte[] hash = put(values(3));
        String hex = HexFormat.of().formatHex(hash);
        for (int at = 0; at < hex.length(); at++) {
            String other = hex.substring(0, at) + (hex.charAt(at) == 'a' ? 'b' : 'a') + hex.substring(at + 1);
            assertThat(CanonicalBytes.isHex(hash, utf8(other))).isEqualTo(other.equals(hex));
        }
        assertThat(CanonicalBytes.isHex(hash, utf8(hex.toUpperCase(java.util.Locale.ROOT))))
                .isFalse();
        assertThat(CanonicalBytes.isHex(hash, utf8(hex + "0"))).isFalse();
        assertThat(CanonicalBytes.isHex(hash, new byte[0])).isFalse();
    }

    @Test
    void one_text_over_another_is_what_the_values_say() {
        for (int i = 0; i < TEXTS; i++) {
            Map<String, @Nullable Object> earlier = shortValues();
            Map<String, @Nullable Object> later = shortValues();

            byte[] merged = CanonicalMerge.of(utf8(canonical.text(earlier)), utf8(canonical.text(later)));

            Map<String, @Nullable Object> both = new TreeMap<>(earlier);
            both.putAll(later);
            assertThat(merged).as("seed %d, text %d", SEED, i).isEqualTo(utf8(canonical.text(both)));
        }
    }

    @Test
    void a_figure_of_as_many_digits_as_overflow_is_left_to_the_longer_way() {
        assertThat(CanonicalMerge.isCanonical(utf8("{\"a\":" + Long.MAX_VALUE + "}")))
                .isFalse();
        assertThat(CanonicalMerge.isCanonical(utf8("{\"a\":" + Long.MAX_VALUE / 10 + "}")))
                .isTrue();
    }

    /** Whatever the library would not read, or would read as something that is written otherwise, is not taken. */
    @Test
    void what_is_taken_for_canonical_reads_and_is_written_the_same_again() {
        int taken = 0;
        for (int i = 0; i < 20 * TEXTS; i++) {
            byte[] text = utf8(canonical.text(values(1 + random.nextInt(4))));
            int at = random.nextInt(text.length);
            text[at] = (byte) LETTERS.charAt(random.nextInt(18));
            if (!CanonicalMerge.isCanonical(text)) {
                assertThat(CanonicalMerge.of(text, utf8("{}"))).isNull();
                continue;
            }
            taken++;
            String read = new String(text, StandardCharsets.UTF_8);
            assertThat(canonical.text(canonical.values(read)))
                    .as("seed %d, text %d", SEED, i)
                    .isEqualTo(read);
        }
        assertThat(taken).isPositive();
    }

    private byte[] put(Map<String, @Nullable Object> values) {
        bytes.begin();
        values.forEach((name, value) -> {
            bytes.name(CanonicalBytes.quoted(name));
            if (value == null) {
                bytes.nothing();
            } else if (value instanceof Long number) {
                byte[] ascii = utf8(' ' + number.toString() + ' ');
                bytes.digits(ascii, 1, ascii.length - 1);
            } else {
                bytes.text(utf8(value.toString()));
            }
        });
        bytes.end();
        return bytes.hash();
    }

    private Map<String, @Nullable Object> values(int many) {
        Map<String, @Nullable Object> values = new TreeMap<>();
        for (int i = 0; i < many; i++) {
            values.put("column_" + (char) ('a' + random.nextInt(9)), value());
        }
        return values;
    }

    /** Without figures of 19 digits. */
    private Map<String, @Nullable Object> shortValues() {
        Map<String, @Nullable Object> values = values(random.nextInt(6));
        values.replaceAll((name, value) -> value instanceof Long number ? Long.valueOf(number / 10) : value);
        return values;
    }

    private @Nullable Object value() {
        return switch (random.nextInt(6)) {
            case 0 -> null;
            case 1 -> random.nextLong() >> random.nextInt(64);
            case 2 -> random.nextBoolean() ? Long.MIN_VALUE : Long.MAX_VALUE;
            case 3 -> 0L;
            default -> text();
        };
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        for (int length = random.nextInt(20); length > 0; length--) {
            int at = random.nextInt(LETTERS.length());
            char letter = LETTERS.charAt(at);
            if (Character.isSurrogate(letter)) {
                text.append("\ud83d\udd27");
            } else {
                text.append(letter);
            }
        }
        return text.toString();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
