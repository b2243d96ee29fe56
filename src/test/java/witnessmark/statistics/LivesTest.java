package witnessmark.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lives and failures against printed figures, R and scipy; each file of figures has its source beside each row. */
class LivesTest {
    static Stream<CsvRecord> meanLives() {
        return rows("mean-life.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("meanLives")
    void a_mean_life_and_its_bounds_are_as_printed(CsvRecord row) {
        MeanLife life =
                new MeanLife(number(row, 2), Integer.parseInt(row.getField(3)), MeanLife.Ends.valueOf(row.getField(4)));
        double expected = number(row, 7);

        double ours = switch (row.getField(5)) {
            case "likely" -> life.likely();
            case "atLeast" -> life.atLeast(number(row, 6));
            default -> life.atMost(number(row, 6));
        };

        assertThat(ours).isCloseTo(expected, within(expected * number(row, 8)));
    }

    @Test
    void without_a_failure_there_is_no_likely_life_and_no_upper_bound() {
        MeanLife none = new MeanLife(1_000, 0, MeanLife.Ends.AT_A_TIME);

        assertThat(none.likely()).isInfinite();
        assertThat(none.atMost(0.9)).isInfinite();
        assertThatIllegalArgumentException().isThrownBy(() -> new MeanLife(1_000, 0, MeanLife.Ends.WITH_A_FAILURE));
        assertThatIllegalArgumentException().isThrownBy(() -> new MeanLife(0, 1, MeanLife.Ends.AT_A_TIME));
        assertThatIllegalArgumentException().isThrownBy(() -> none.atLeast(1));
    }

    static Stream<CsvRecord> statedShapes() {
        return rows("stated-shape.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("statedShapes")
    void lives_of_a_stated_shape_are_as_computed_in_thirty_digits(CsvRecord row) {
        boolean one = row.getField(0).startsWith("WB1");
        double shape = one ? 2 : 3;
        double[] exits = one
                ? new double[] {480, 500, 500, 500, 500, 500, 500, 500, 500, 500}
                : new double[] {120, 150, 150, 180, 210, 260};
        double[] entries = new double[exits.length];
        String quantity = row.getField(1);
        int failures = one ? 1 : 0;

        WeibullLife life = quantity.equals("eta_hat")
                ? WeibullLife.withShape(shape, entries, exits, failures)
                : WeibullLife.atLeast(shape, entries, exits, failures, confidence(quantity));

        assertThat(quantity.startsWith("B10") ? life.ageBy(0.1) : life.scale())
                .isCloseTo(number(row, 2), within(number(row, 2) * number(row, 3)));
    }

    /** The confidence at which the divisor is 1, 1 − 1/e, is written with six digits in the names of figures. */
    private static double confidence(String quantity) {
        String written = quantity.substring(quantity.lastIndexOf('_') + 1);
        return written.equals("0.632121") ? 1 - Math.exp(-1) : Double.parseDouble(written);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void the_likeliest_scale_makes_what_was_seen_likeliest_also_where_lives_were_watched_late(long seed) {
        Random random = new Random(seed);
        double shape = 0.6 + 3 * random.nextDouble();
        int n = 4 + random.nextInt(12);
        double[] entries = random.doubles(n, 0, 5).toArray();
        double[] exits = new double[n];
        Arrays.setAll(exits, i -> entries[i] + 0.1 + 10 * random.nextDouble());
        int failures = 1 + random.nextInt(n);

        double scale = WeibullLife.withShape(shape, entries, exits, failures).scale();

        double best = likelihood(shape, scale, entries, exits, failures);
        for (double factor = 0.5; factor < 2; factor += 0.0131) {
            assertThat(likelihood(shape, scale * factor, entries, exits, failures))
                    .isLessThanOrEqualTo(best + 1e-12);
        }
    }

    private static double likelihood(double shape, double scale, double[] entries, double[] exits, int failures) {
        double log = 0;
        for (int i = 0; i < exits.length; i++) {
            log += Math.pow(entries[i] / scale, shape) - Math.pow(exits[i] / scale, shape);
            log += i < failures ? Math.log(shape / scale * Math.pow(exits[i] / scale, shape - 1)) : 0;
        }
        return log;
    }

    @ParameterizedTest
    @CsvSource({"2.5, 40, 10, 5", "0.8, 500, 0, 30", "1, 12, 6, 6", "3.2, 20, 19, 0"})
    void living_on_from_an_age_is_living_to_the_later_one_given_the_first(
            double shape, double scale, double age, double further) {
        WeibullLife life = new WeibullLife(shape, scale);

        assertThat(life.survivalFrom(age, further))
                .isCloseTo(life.survival(age + further) / life.survival(age), within(1e-14));
        assertThat(life.survival(life.ageBy(0.1))).isCloseTo(0.9, within(1e-14));
    }

    @ParameterizedTest(name = "{0} failures, {1} times their running")
    @CsvSource({"1, 0.5", "1, 2", "2, 0.448", "2, 1", "3, 0.25", "5, 1"})
    void the_chance_of_a_quiet_run_is_what_a_simulation_finds(int failures, double times) {
        Random random = new Random(20261129);
        int quiet = 0;
        int tries = 200_000;
        for (int i = 0; i < tries; i++) {
            double running = 0;
            for (int k = 0; k < failures; k++) {
                running += exponential(random);
            }
            quiet += exponential(random) > times * running ? 1 : 0;
        }

        double chance = new QuietRun(12.46, failures).chance(times * 12.46);

        assertThat((double) quiet / tries).isCloseTo(chance, within(4 * Math.sqrt(chance * (1 - chance) / tries)));
    }

    private static double exponential(Random random) {
        return -Math.log(1 - random.nextDouble());
    }

    @ParameterizedTest
    @CsvSource({"6.08, 1, 0.05", "12.46, 2, 0.1", "12.46, 2, 1", "3, 4, 0.5"})
    void what_is_needed_for_a_chance_gives_that_chance(double running, int failures, double chance) {
        QuietRun run = new QuietRun(running, failures);

        assertThat(run.chance(run.needed(chance))).isCloseTo(chance, within(1e-12));
        assertThat(run.chance(0)).isEqualTo(1);
    }

    static Stream<CsvRecord> ofR() {
        return rows("log-rank.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ofR")
    void two_groups_compare_as_in_r_whether_watched_from_the_start_or_late(CsvRecord row) {
        LogRank ours = LogRank.of(lives(row.getField(1)), lives(row.getField(2)));

        assertThat(ours.observed()).isEqualTo((int) number(row, 3));
        if (!row.getField(4).strip().equals("NA")) {
            assertThat(ours.expected()).isCloseTo(number(row, 4), within(1e-10));
            assertThat(ours.variance()).isCloseTo(number(row, 5), within(1e-10));
        }
        assertThat(ours.chiSquare()).isCloseTo(number(row, 6), within(1e-9));
        assertThat(ours.p()).isCloseTo(number(row, 7), within(1e-9));
    }

    static Stream<CsvRecord> ofScipy() {
        return rows("log-rank-scipy.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ofScipy")
    void two_groups_compare_as_in_scipy(CsvRecord row) {
        List<LogRank.Life> first = lives(row.getField(0));
        List<LogRank.Life> second = lives(row.getField(1));

        LogRank ours = LogRank.of(first, second);

        assertThat(ours.chiSquare()).isCloseTo(Math.pow(number(row, 2), 2), within(1e-10));
        assertThat(ours.p()).isCloseTo(number(row, 3), within(1e-10));
        assertThat(LogRank.of(second, first).chiSquare()).as("turned about").isCloseTo(ours.chiSquare(), within(1e-10));
    }

    /** The least and the most that could have failed of the first are looked for one by one, at every age. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void the_room_of_mantel_and_fleiss_is_that_of_every_table_there_could_have_been(long seed) {
        Random random = new Random(seed);
        List<LogRank.Life> first = drawn(random);
        List<LogRank.Life> second = drawn(random);
        double least = 0;
        double most = 0;
        for (int age = 1; age <= 12; age++) {
            int of = atRisk(first, age);
            int others = atRisk(second, age);
            int failed = failed(first, age) + failed(second, age);
            int[] could = IntStream.rangeClosed(0, failed)
                    .filter(k -> k <= of && failed - k <= others)
                    .toArray();
            least += could[0];
            most += could[could.length - 1];
        }

        LogRank ours = LogRank.of(first, second);

        assertThat(ours.room()).isCloseTo(Math.min(ours.expected() - least, most - ours.expected()), within(1e-12));
        assertThat(ours.enough()).isEqualTo(ours.room() >= 5);
    }

    private static List<LogRank.Life> drawn(Random random) {
        return IntStream.range(0, 4 + random.nextInt(30))
                .mapToObj(i -> {
                    int entry = random.nextInt(4);
                    return new LogRank.Life(entry, entry + 1 + random.nextInt(8), random.nextBoolean());
                })
                .toList();
    }

    private static int atRisk(List<LogRank.Life> lives, int age) {
        return (int) lives.stream()
                .filter(life -> life.entry() < age && life.exit() >= age)
                .count();
    }

    private static int failed(List<LogRank.Life> lives, int age) {
        return (int) lives.stream()
                .filter(life -> life.failed() && life.exit() == age)
                .count();
    }

    @Test
    void groups_in_which_nothing_failed_are_alike() {
        LogRank none = LogRank.of(lives("5+ 6+"), lives("7+"));

        assertThat(none.failures()).isZero();
        assertThat(none.p()).isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> LogRank.of(List.of(), lives("7+")));
    }

    /** As in {@code 2:5.7+ 9.7}: from two on to 5.7 and going on; to 9.7, where it failed. */
    private static List<LogRank.Life> lives(String text) {
        return Stream.of(text.split(" "))
                .map(word -> {
                    String[] ends = word.replace("+", "").split(":");
                    double exit = Double.parseDouble(ends[ends.length - 1]);
                    double entry = ends.length == 2 ? Double.parseDouble(ends[0]) : 0;
                    return new LogRank.Life(entry, exit, !word.endsWith("+"));
                })
                .toList();
    }

    private static double number(CsvRecord row, int field) {
        return Double.parseDouble(row.getField(field).strip());
    }

    private static Stream<CsvRecord> rows(String file) {
        try (Reader reader = new InputStreamReader(
                        Objects.requireNonNull(LivesTest.class.getResourceAsStream("/statistics/" + file)),
                        StandardCharsets.UTF_8);
                CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(reader)) {
            return csv.stream().skip(1).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
