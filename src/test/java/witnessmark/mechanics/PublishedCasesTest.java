package witnessmark.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Figures of handbooks and standards, worked out again; {@code expected.csv} has each with its source. Displacements are
 * catalogued figures from memory; the bolt of B1 is example 8-4 of Shigley's Mechanical Engineering Design.
 */
class PublishedCasesTest {
    private static final ChamberStack V2 = new ChamberStack(
            86, 86, 48.2, 87.5, 0.7, 0.15, -4.6, ChamberStack.disc(86, 6) - ChamberStack.disc(85.4, 6));
    private static final double AREA = 5200;
    private static final BoltedJoint B1 = new BoltedJoint(5.21, 8.95);
    private static final double PROOF = 85 * 0.226;
    private static final double FI = 0.75 * PROOF;
    private static final BoltedJoint B3 = new BoltedJoint(180_000, 720_000);
    private static final double TURNED = 6_000 + B3.fromAngle(1.25, 90);

    static Stream<CsvRecord> cases() {
        return rows("expected.csv").stream().filter(row -> !row.getField(2).equals("reject"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void a_published_figure_comes_out(CsvRecord row) {
        String name = row.getField(0) + ": " + row.getField(1);
        double expected = Double.parseDouble(row.getField(2));
        double tolerance = row.getField(4).equals("exact") ? 0 : Double.parseDouble(row.getField(3));
        double allowed = (row.getField(4).equals("rel") ? Math.abs(expected) * tolerance : tolerance)
                + halfOfLastDigit(row.getField(2));

        DoubleSupplier ours = Objects.requireNonNull(figures().get(name), name);

        assertThat(ours.getAsDouble()).as(name).isCloseTo(expected, within(allowed));
    }

    /** A figure printed with decimals is known to half its last digit. */
    static double halfOfLastDigit(String printed) {
        return printed.contains(".") ? new BigDecimal(printed).ulp().doubleValue() / 2 : 0;
    }

    @Test
    void no_figure_is_left_out() {
        assertThat(cases().map(row -> row.getField(0) + ": " + row.getField(1)))
                .containsExactlyInAnyOrderElementsOf(figures().keySet());
    }

    private static Map<String, DoubleSupplier> figures() {
        Map<String, DoubleSupplier> figures = new HashMap<>();
        volumes(figures);
        joints(figures);
        faces(figures);
        return figures;
    }

    private static void volumes(Map<String, DoubleSupplier> figures) {
        String v1 = "V1_displacement: ";
        double inch = 25.4;
        figures.put(v1 + "eight cylinders 4.000 x 3.000 in V8 cc", () -> 8 * ChamberStack.disc(4 * inch, 3 * inch));
        figures.put(v1 + "eight cylinders 4.000 x 3.480 in V8 cc", () -> 8 * ChamberStack.disc(4 * inch, 3.48 * inch));
        figures.put(v1 + "four cylinders 87 x 84 mm, 4 cc", () -> 4 * ChamberStack.disc(87, 84));
        figures.put(v1 + "six cylinders 87 x 91 mm, 6 cc", () -> 6 * ChamberStack.disc(87, 91));
        figures.put(v1 + "first engine, cubic inch", () -> 8 * ChamberStack.disc(4, 3) * 1000);

        String v2 = "V2_cr: ";
        figures.put(v2 + "swept_cc", V2::swept);
        figures.put(v2 + "gasket_cc", V2::gasketVolume);
        figures.put(v2 + "deck_cc", V2::deckVolume);
        figures.put(v2 + "crevice_cc", V2::crevice);
        figures.put(v2 + "clearance_cc", V2::clearance);
        figures.put(v2 + "compression_ratio", V2::ratio);
        figures.put(
                v2 + "compression_ratio after 0.25 mm head skim",
                () -> V2.afterHeadSkim(0.25, AREA).ratio());
        figures.put(
                v2 + "compression_ratio after 0.15 mm block decking",
                () -> V2.afterDeckSkim(0.15).ratio());
        figures.put(v2 + "skim mm for ratio 12.5", () -> V2.headSkimFor(12.5, AREA));
        figures.put(v2 + "clearance_cc for ratio 12.5", () -> ChamberStack.clearanceFor(V2.swept(), 12.5));
        figures.put(
                v2 + "compression_ratio with 1.0 mm gasket",
                () -> V2.withGasket(87.5, 1.0).ratio());
        figures.put(
                v2 + "standard uncertainty of ratio (chamber 0.1 cc, deck 0.01 mm, gasket 0.01 mm;"
                        + " JCGM 100 root-sum-square)",
                () -> FirstOrder.of(
                                PublishedCasesTest::ratio, new double[] {48.2, 0.15, 0.7}, new double[] {0.1, 0.01, 0.01
                                })
                        .standard());

        String v3 = "V3_simple: ";
        figures.put(v3 + "Vs 450 Vc 50", () -> ChamberStack.ratio(450, 50));
        figures.put(v3 + "Vs 500 Vc 55.5555555556", () -> ChamberStack.ratio(500, 55.5555555556));
        figures.put(v3 + "Vs 499.556 Vc 45 -> add 5 cc", () -> ChamberStack.ratio(499.556, 45 + 5));
    }

    private static double ratio(double[] figures) {
        return new ChamberStack(86, 86, figures[0], 87.5, figures[2], figures[1], -4.6, V2.crevice()).ratio();
    }

    private static void joints(Map<String, DoubleSupplier> figures) {
        String b1 = "B1_shigley_8_4: ";
        double load = 36.0 / 6;
        figures.put(b1 + "C", B1::constant);
        figures.put(b1 + "Fi_kip", () -> FI);
        figures.put(b1 + "N_exact for nL=2", () -> B1.boltsFor(36, 2, PROOF, FI));
        figures.put(b1 + "N", () -> Math.ceil(B1.boltsFor(36, 2, PROOF, FI)));
        figures.put(b1 + "load_factor nL", () -> B1.loadFactor(PROOF, FI, load));
        figures.put(b1 + "yield_factor np", () -> B1.yieldFactor(PROOF, FI, load));
        figures.put(b1 + "separation_factor n0", () -> B1.separationFactor(FI, load));

        String b2 = "B2_stress_area: ";
        figures.put(b2 + "M8x1.25 At mm2", () -> Threads.metricStressArea(8, 1.25));
        figures.put(b2 + "M10x1.5 At mm2", () -> Threads.metricStressArea(10, 1.5));
        figures.put(b2 + "M12x1.75 At mm2", () -> Threads.metricStressArea(12, 1.75));
        figures.put(b2 + "5/8-11 At in2", () -> Threads.unifiedStressArea(5.0 / 8, 11));
        figures.put(b2 + "3/4-16 At in2", () -> Threads.unifiedStressArea(3.0 / 4, 16));
        figures.put(b2 + "M10 8.8 proof load kN (580 MPa x 58.0)", () -> 580 * 58.0 / 1000);
        figures.put(b2 + "M8 12.9 proof load kN (970 x 36.6)", () -> 970 * 36.6 / 1000);

        String b3 = "B3_torque_angle: ";
        figures.put(b3 + "joint_series_stiffness_N_mm", B3::inSeries);
        figures.put(b3 + "force_from_angle_N", () -> B3.fromAngle(1.25, 90));
        figures.put(b3 + "preload_N", () -> TURNED);
        figures.put(b3 + "torque_Nm equivalent K F d", () -> Preload.torqueFor(TURNED, 0.18, 10));
        figures.put(b3 + "C", B3::constant);
        figures.put(b3 + "bolt_force_under_load_N", () -> B3.boltForce(TURNED, 22_000));
        figures.put(b3 + "clamp_force_under_load_N", () -> B3.clampForce(TURNED, 22_000));
        figures.put(b3 + "separation_load_N", () -> B3.separationLoad(TURNED));
    }

    private static void faces(Map<String, DoubleSupplier> figures) {
        Map.of("SF4_one_high_corner: ", "SF4_one_high_corner.csv", "SF5_twist: ", "SF5_twist.csv")
                .forEach((name, file) -> {
                    List<SurfacePoint> points = points(file);
                    Flatness.LeastSquares plane = Flatness.leastSquares(points);
                    figures.put(name + "ls_plane_a", plane::a);
                    figures.put(name + "ls_plane_b", plane::b);
                    figures.put(name + "ls_plane_c", plane::c);
                    figures.put(name + "flatness_least_squares_um", plane::peakToValley);
                    figures.put(name + "flatness_minimum_zone_um", () -> Flatness.minimumZone(points));
                    figures.put(name + "rms_residual (n-3)", plane::rms);
                });
    }

    private static List<SurfacePoint> points(String file) {
        return rows(file).stream()
                .map(row -> new SurfacePoint(
                        Double.parseDouble(row.getField(0)),
                        Double.parseDouble(row.getField(1)),
                        Double.parseDouble(row.getField(2))))
                .toList();
    }

    static List<CsvRecord> rows(String file) {
        try (Reader reader = new InputStreamReader(
                        Objects.requireNonNull(PublishedCasesTest.class.getResourceAsStream("/mechanics/" + file)),
                        StandardCharsets.UTF_8);
                CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(reader)) {
            return csv.stream().skip(1).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
