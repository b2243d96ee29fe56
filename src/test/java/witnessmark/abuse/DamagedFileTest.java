package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Logbook;
import witnessmark.store.RandomFacts;
import witnessmark.store.TestLogbooks;

/**
 * A logbook file damaged where it lies: a bit flipped, a sector that reads as zeros, a sector that reads as it was
 * earlier. Whatever was damaged is refused, found by the check behind every opening, or does no harm. Oracle: what the
 * same file said before.
 */
class DamagedFileTest {
    private static final int DAMAGES = Numbers.of("damaged", 1_000, 20_000);
    private static final int SECTOR = 512;
    private static final int PAGE = 4_096;

    @TempDir(factory = InMemory.class)
    static Path folder;

    private static WholeLogbook whole;
    private static List<Integer> written;

    @BeforeAll
    static void make() throws IOException {
        whole = WholeLogbook.in(folder, Numbers.seed());
        written = new ArrayList<>();
        for (int at = 0; at < whole.bytes.length; at++) {
            if (whole.bytes[at] != 0) {
                written.add(at);
            }
        }
    }

    @Test
    void whatever_is_damaged_nothing_is_read_wrong_in_silence() throws IOException {
        Random random = Numbers.random("damaged");
        Map<Judgement, Integer> counts = new EnumMap<>(Judgement.class);
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < DAMAGES; i++) {
            byte[] damaged = whole.bytes.clone();
            String what = damage(damaged, i, random);
            Judgement judgement = judge(damaged, i);
            counts.merge(judgement, 1, Integer::sum);
            if (judgement == Judgement.SILENTLY_WRONG) {
                wrong.add(what);
            }
        }
        Numbers.tell("R9 damaged files", counts);
        assertThat(wrong).as("seed %d", Numbers.seed()).isEmpty();
        assertThat(counts.getOrDefault(Judgement.FOUND_BY_CHECK_ALONE, 0))
                .as("the damage reaches figures that only the check can tell from true ones")
                .isPositive();
    }

    /** The test itself is tested: a run corrected as the program does it, so that every check holds. */
    @Test
    void a_figure_that_was_changed_under_every_check_would_be_noticed() throws IOException {
        Path file = folder.resolve("planted.witness");
        WholeLogbook.put(file, whole.bytes);
        try (Logbook logbook = whole.open(file).orThrow()) {
            Entry<Run> run = logbook.facts().of(Run.class).all().get(3);
            TestLogbooks.write(logbook, new RandomFacts(1).edited(run, logbook.facts()))
                    .orThrow();
        }
        assertThat(Judgement.of(whole.open(file), whole.truth)).isEqualTo(Judgement.SILENTLY_WRONG);
        assertThat(judge(whole.bytes, -1)).isEqualTo(Judgement.HARMLESS);
    }

    private static Judgement judge(byte[] damaged, int number) throws IOException {
        Path file = whole.placeIn(folder, "damaged-" + number);
        WholeLogbook.put(file, damaged);
        try {
            return Judgement.of(whole.open(file), whole.truth);
        } finally {
            WholeLogbook.remove(file);
        }
    }

    /** Seven in ten are flipped bits, half of them where something is written; the others are sectors. */
    private static String damage(byte[] bytes, int number, Random random) {
        int kind = number % 10;
        if (kind < 7) {
            int at = number % 2 == 0 ? random.nextInt(bytes.length) : written.get(random.nextInt(written.size()));
            int bit = random.nextInt(8);
            bytes[at] ^= (byte) (1 << bit);
            return "bit " + bit + " of byte " + at;
        }
        int size = random.nextBoolean() ? SECTOR : PAGE;
        int from = written.get(random.nextInt(written.size())) / size * size;
        if (kind < 8 || from + size > whole.earlier.length) {
            Arrays.fill(bytes, from, from + size, (byte) 0);
            return size + " zeros from byte " + from;
        }
        System.arraycopy(whole.earlier, from, bytes, from, size);
        return size + " bytes as they were earlier from byte " + from;
    }
}
