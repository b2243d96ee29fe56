package witnessmark.trace.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Numbers are read to the last bit as Double.parseDouble reads them. */
class DecimalsTest {
    private static final int TEXTS = 1_000_000;
    private static final int IN_A_ROW = 100;

    @Test
    void a_million_texts_are_read_to_the_last_bit() throws IOException {
        SplittableRandom random = new SplittableRandom(20260503);
        for (int round = 0; round < TEXTS / IN_A_ROW; round++) {
            String[] texts = new String[IN_A_ROW];
            for (int i = 0; i < texts.length; i++) {
                texts[i] = text(random);
            }
            boolean comma = round % 2 == 0;
            String line = String.join(";", texts);
            byte[] bytes = (comma ? line.replace('.', ',') : line).getBytes(StandardCharsets.US_ASCII);
            RowScanner scanner =
                    new RowScanner(new ByteArrayInputStream(bytes), ';', comma ? ',' : '.', (char) 0, IN_A_ROW);
            assertThat(scanner.next()).isTrue();
            for (int i = 0; i < texts.length; i++) {
                double expected = Double.parseDouble(texts[i]);
                if (Double.isInfinite(expected)) {
                    assertThat(scanner.kind(i)).as(texts[i]).isNotEqualTo(RowScanner.NUMBER);
                } else if (Double.doubleToRawLongBits(scanner.value(i)) != Double.doubleToRawLongBits(expected)) {
                    throw new AssertionError(texts[i] + " read as " + scanner.value(i));
                }
            }
        }
    }

    private static String text(SplittableRandom random) {
        String sign = random.nextInt(3) == 0 ? "-" : random.nextInt(9) == 0 ? "+" : "";
        return sign
                + switch (random.nextInt(6)) {
                    case 0 -> Long.toString(random.nextLong(0, Long.MAX_VALUE));
                    case 1 ->
                        Double.toString(Math.abs(Double.longBitsToDouble(random.nextLong())))
                                .replace("NaN", "0.1")
                                .replace("Infinity", "0.2");
                    case 2 -> digits(random, 25) + "." + digits(random, 25);
                    case 3 -> digits(random, 4) + "e" + (random.nextInt(640) - 320);
                    case 4 -> (random.nextBoolean() ? "." : "0.") + digits(random, 8);
                    default ->
                        BigDecimal.valueOf(random.nextInt(10_000_000), random.nextInt(6))
                                .toPlainString();
                };
    }

    private static String digits(SplittableRandom random, int most) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(most); i >= 0; i--) {
            text.append((char) ('0' + random.nextInt(10)));
        }
        return text.toString();
    }
}
