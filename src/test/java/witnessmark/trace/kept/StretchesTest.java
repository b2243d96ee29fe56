package witnessmark.trace.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.EOFException;
import java.io.IOException;
import java.util.Arrays;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stretches whose checksum is right and whose bytes are not: made to do harm. They are read or told, and nothing else. */
class StretchesTest {
    private static final int ROUNDS = 20_000;

    private static Block block(byte[] bytes, int samples) {
        int checksum = Frame.checksum(bytes, bytes.length);
        return new Block(0, bytes.length, checksum, samples, 0, 0, 0, 0, 0, bytes.length, checksum);
    }

    private static String read(byte[] bytes, int samples, boolean deflated) {
        Block block = block(bytes, samples);
        try (Stretches stretches = new Stretches(Bytes.of(bytes), deflated)) {
            stretches.samples(block, new long[samples], new double[samples], 0);
            return "read";
        } catch (KeptDamaged e) {
            return String.valueOf(e.getMessage()).replaceAll("\\d+", "n");
        } catch (IOException e) {
            return "not read";
        }
    }

    private static byte[] coded(SplittableRandom random, int samples) {
        long[] micros = new long[samples];
        double[] values = new double[samples];
        int kind = random.nextInt(4);
        for (int i = 0; i < samples; i++) {
            micros[i] = i * 1000L + random.nextInt(1 + random.nextInt(3));
            values[i] = switch (kind) {
                case 0 -> random.nextInt(100);
                case 1 -> random.nextInt(100) / 10.0;
                case 2 -> random.nextInt(4) == 0 ? Double.NaN : random.nextInt(100_000);
                default -> Double.longBitsToDouble(random.nextLong() >>> 2);
            };
        }
        Numbers numbers = new Numbers();
        Coding coding = new Coding(samples);
        coding.times(micros, samples, numbers);
        coding.figures(values, samples, numbers);
        return Arrays.copyOf(numbers.array(), numbers.length());
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void any_bytes_are_read_or_told(boolean deflated) {
        long seed = 17;
        SplittableRandom random = new SplittableRandom(seed);
        Set<String> came = new TreeSet<>();
        for (int round = 0; round < ROUNDS; round++) {
            int samples = 1 + random.nextInt(200);
            byte[] bytes;
            if (random.nextInt(3) == 0) {
                bytes = new byte[random.nextInt(400)];
                random.nextBytes(bytes);
            } else {
                bytes = coded(random, samples);
                for (int i = random.nextInt(4); i >= 0; i--) {
                    bytes[random.nextInt(Math.min(bytes.length, random.nextBoolean() ? 12 : bytes.length))] =
                            (byte) random.nextInt();
                }
                bytes = random.nextInt(4) == 0 ? Arrays.copyOf(bytes, random.nextInt(2 * bytes.length)) : bytes;
            }
            came.add(read(bytes, samples, deflated));
        }
        if (!deflated) {
            assertThat(came)
                    .as("seed " + seed)
                    .contains(
                            "read",
                            "a run ends",
                            "a run of n bits",
                            "a coding of another version",
                            "more than its figures",
                            "numbers end");
        }
    }

    @Test
    void an_empty_stretch_is_none() {
        assertThat(read(new byte[] {0, 0, 1, 0, 0}, 0, false)).isEqualTo("an empty stretch");
    }

    @Test
    void a_place_beyond_any_file_is_beyond_this_one() {
        byte[] bytes = new byte[64];
        assertThatThrownBy(() -> Bytes.of(bytes).read(Long.MAX_VALUE - 3, new byte[8], 0, 8))
                .isInstanceOf(EOFException.class);
        Block far = new Block(Long.MAX_VALUE - 3, 8, 0, 1, 0, 0, 0, 0, 0, 8, 0);
        try (Stretches stretches = new Stretches(Bytes.of(bytes), false)) {
            assertThatThrownBy(() -> stretches.samples(far, new long[1], new double[1], 0))
                    .isInstanceOf(KeptDamaged.class);
        }
    }
}
