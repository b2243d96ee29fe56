package witnessmark.trace.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is a figure, against {@link Double#parseDouble}. */
class TableTest {
    private static final String SIGNS = "0123456789.,+-";

    /** With one mark at most, so that nothing is parted by thousands, and no letters, which parseDouble takes for types. */
    @Test
    void signs_digits_and_one_mark_are_a_number_where_it_reads_one() {
        Random random = new Random(48);
        for (int i = 0; i < 200_000; i++) {
            StringBuilder cell = new StringBuilder();
            int marks = 0;
            for (int length = 1 + random.nextInt(8); cell.length() < length; ) {
                char next = SIGNS.charAt(random.nextInt(SIGNS.length()));
                boolean mark = next == '.' || next == ',';
                if (!mark || marks++ == 0) {
                    cell.append(next);
                }
            }
            String text = cell.toString();
            assertThat(Table.isNumber(text)).as("seed 48, %s", text).isEqualTo(reads(text.replace(',', '.')));
        }
    }

    @Test
    void words_are_none() {
        for (String word :
                new String[] {"bar", "Time", "e", "E+", "NaN", "\u00e9t\u00e9", "5 bar", "12:00", "", "+", "."}) {
            assertThat(Table.isNumber(word)).as(word).isFalse();
        }
        assertThat(Table.isNumber("1e5")).isTrue();
        assertThat(Table.isNumber("1 234,5")).isTrue();
    }

    private static boolean reads(String text) {
        try {
            Double.parseDouble(text);
            return true;
        } catch (NumberFormatException e) {
            return false;
        }
    }
}
