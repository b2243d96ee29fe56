package witnessmark.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Printed figures and those of a reference library; {@code expected.csv} and {@code scipy.csv} have each with its source. */
class PublishedFiguresTest {
    static Stream<CsvRecord> figures() {
        return rows("expected.csv").stream();
    }

    static Stream<CsvRecord> library() {
        return rows("scipy.csv").stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void a_printed_figure_comes_out(CsvRecord row) {
        String name = row.getField(0) + ": " + row.getField(1);
        double expected = Double.parseDouble(row.getField(2));
        double tolerance = Double.parseDouble(row.getField(3));
        double allowed = row.getField(4).equals("rel") ? Math.abs(expected) * tolerance : tolerance;

        DoubleSupplier ours = Objects.requireNonNull(ours().get(name), name);

        assertThat(ours.getAsDouble()).as(name).isCloseTo(expected, within(allowed));
    }

    @Test
    void no_figure_is_left_out() {
        assertThat(figures().map(row -> row.getField(0) + ": " + row.getField(1)))
                .containsExactlyInAnyOrderElementsOf(ours().keySet());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("library")
    void the_reference_library_says_the_same(CsvRecord row) {
        double[] x = numbers(row.getField(0));
        double[] y = numbers(row.getField(1));
        MannKendall trend = MannKendall.of(x, y);

        assertThat(trend.tau()).isCloseTo(Double.parseDouble(row.getField(2)), within(1e-12));
        assertThat(TheilSen.of(x, y).slope()).isCloseTo(Double.parseDouble(row.getField(4)), within(1e-12));
        if (!row.getField(3).isEmpty()) {
            assertThat(trend.exact()).isTrue();
            assertThat(trend.p()).isCloseTo(Double.parseDouble(row.getField(3)), within(1e-12));
        }
    }

    private static Map<String, DoubleSupplier> ours() {
        Map<String, DoubleSupplier> ours = new HashMap<>();
        StraightLine norris = StraightLine.of(column("T1_norris.csv", 0), column("T1_norris.csv", 1));
        String t1 = "T1_norris: ";
        ours.put(t1 + "intercept", norris::intercept);
        ours.put(t1 + "slope", norris::slope);
        ours.put(t1 + "se_intercept", norris::interceptError);
        ours.put(t1 + "se_slope", norris::slopeError);
        ours.put(t1 + "residual_sd", norris::residual);
        ours.put(t1 + "r_squared", norris::rSquared);
        ours.put(t1 + "fit at x=500", () -> norris.at(500));
        ours.put(t1 + "95% confidence half-width at 500", () -> norris.confidence(500, 0.95));
        ours.put(t1 + "95% prediction half-width at 500", () -> norris.prediction(500, 0.95));
        double[] from60 = IntStream.rangeClosed(60, 70).asDoubleStream().toArray();
        double[] from130 = IntStream.rangeClosed(130, 140).asDoubleStream().toArray();
        StraightLine perfect = StraightLine.of(from60, from130);
        ours.put("T2_perfect: slope", perfect::slope);
        ours.put("T2_perfect: intercept", perfect::intercept);
        ours.put("T2_perfect: residual_sd", perfect::residual);
        ours.put("T2_perfect: prediction half-width", () -> perfect.prediction(65, 0.95));
        trend(ours, "T3_epa_ties");
        trend(ours, "T4_epa_small");
        MannKendall small = MannKendall.of(column("T4_epa_small.csv", 0), column("T4_epa_small.csv", 1));
        ours.put("T4_epa_small: exact one_sided_p", small::oneSided);
        return ours;
    }

    private static void trend(Map<String, DoubleSupplier> ours, String of) {
        double[] t = column(of + ".csv", 0);
        double[] x = column(of + ".csv", 1);
        MannKendall trend = MannKendall.of(t, x);
        TheilSen line = TheilSen.of(t, x);
        ours.put(of + ": S", trend::score);
        ours.put(of + ": var_S (tie corrected)", trend::variance);
        ours.put(of + ": Z (continuity corrected)", trend::z);
        ours.put(
                of + ": two_sided_p_normal",
                () -> trend.exact() ? 2 * new NormalDistribution().cumulativeProbability(-trend.z()) : trend.p());
        ours.put(of + ": sen_slope", line::slope);
        ours.put(of + ": median of x - b t", line::intercept);
        ours.put(of + ": kendall_tau_b", trend::tau);
    }

    private static double[] column(String file, int column) {
        return rows(file).stream()
                .mapToDouble(row -> Double.parseDouble(row.getField(column)))
                .toArray();
    }

    private static double[] numbers(String text) {
        return Stream.of(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private static List<CsvRecord> rows(String file) {
        try (Reader reader = new InputStreamReader(
                        Objects.requireNonNull(PublishedFiguresTest.class.getResourceAsStream("/statistics/" + file)),
                        StandardCharsets.UTF_8);
                CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(reader)) {
            return csv.stream().skip(1).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
