package witnessmark.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Crank, rod and its stretch against published cases; {@code slider-crank.csv} has each with its source: Khurmi and Gupta,
 * Theory of Machines, chapter 15 (from memory); a college calculus problem; Den Hartog and Taylor for the orders (from
 * memory); Heywood, equation 2.9; strength of materials.
 */
class SliderCrankTest {
    private static final double DEGREE = Math.PI / 180;
    private static final SliderCrank KHURMI = new SliderCrank(0.15, 0.6);
    private static final SliderCrank PROBLEM = new SliderCrank(0.08, 0.245);
    private static final SliderCrank HALF = new SliderCrank(0.1, 0.2);
    private static final RodStretch ROD = new RodStretch(new SliderCrank(0.045, 0.15), 0.55, 205e9, 7850, 0.15);
    private static final double AREA = 0.0002;
    private static final double FAST = SliderCrank.omega(8000);

    static Stream<CsvRecord> cases() {
        return PublishedCasesTest.rows("slider-crank.csv").stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void a_published_figure_comes_out(CsvRecord row) {
        String name = row.getField(0) + ": " + row.getField(1);
        double expected = Double.parseDouble(row.getField(2));
        double tolerance = Double.parseDouble(row.getField(3));
        double allowed = (row.getField(4).equals("rel") ? Math.abs(expected) * tolerance : tolerance)
                + PublishedCasesTest.halfOfLastDigit(row.getField(2));

        DoubleSupplier ours = Objects.requireNonNull(figures().get(name), name);

        assertThat(ours.getAsDouble()).as(name).isCloseTo(expected, within(allowed));
    }

    @Test
    void no_figure_is_left_out() {
        assertThat(figures().keySet())
                .containsAll(cases().map(row -> row.getField(0) + ": " + row.getField(1))
                        .toList());
    }

    private static Map<String, DoubleSupplier> figures() {
        Map<String, DoubleSupplier> figures = new HashMap<>();
        crank("SC1_khurmi: ", KHURMI, 450, 2.5, figures);
        crank("SC2_rose_hulman: ", PROBLEM, 1000, 0.6, figures);
        crank("SC3_half_ratio: ", HALF, 9.549296585513721, 1, figures);
        for (String ratio : new String[] {"0.25", "0.3"}) {
            SliderCrank crank = new SliderCrank(Double.parseDouble(ratio), 1);
            for (int order : new int[] {2, 4, 6}) {
                figures.put("SC4_harmonics: lambda=" + ratio + " A" + order, () -> crank.order(order));
            }
        }
        String mean = "SC5_mean_speed: ";
        figures.put(mean + "84 mm stroke: 84 mm x 9000 rpm", () -> SliderCrank.meanPistonSpeed(0.084, 9000));
        figures.put(mean + "90 mm: 90 mm x 6600 rpm", () -> SliderCrank.meanPistonSpeed(0.090, 6600));
        figures.put(mean + "100 mm: 100 mm x 6000 rpm", () -> SliderCrank.meanPistonSpeed(0.100, 6000));
        String rod = "SC6_rod_stretch: ";
        RodStretch weightless = new RodStretch(ROD.crank(), 0.55, 205e9, 0, 0.15);
        figures.put(rod + "accel_small_end_m_s2", () -> ROD.crank().accelerationAtTop(FAST));
        figures.put(rod + "piston_inertia_force_N", () -> weightless.forceAtBigEnd(AREA, FAST));
        figures.put(rod + "stretch_piston_only_mm", () -> 1000 * weightless.uniform(AREA, FAST));
        figures.put(rod + "stretch_total_mm", () -> 1000 * ROD.uniform(AREA, FAST));
        figures.put(rod + "force_at_big_end_N", () -> ROD.forceAtBigEnd(AREA, FAST));
        String plain = "SC7_FL_AE: ";
        figures.put(
                plain + "F 10 kN, L 1 m, A 100 mm2, E 200 GPa: dL mm",
                () -> 1000 * RodStretch.underForce(10_000, 1, 100e-6, 200e9));
        figures.put(plain + "thermal growth steel 11.7e-6/K, 150 mm, 80 K: mm", () -> Growth.of(11.7e-6, 150, 80));
        figures.put(plain + "aluminium 23e-6/K, 220 mm deck, 80 K: mm", () -> Growth.of(23e-6, 220, 80));
        return figures;
    }

    private static void crank(
            String name, SliderCrank crank, double rpm, double mass, Map<String, DoubleSupplier> figures) {
        double omega = SliderCrank.omega(rpm);
        figures.put(name + "omega_rad_s", () -> omega);
        figures.put(name + "mean_piston_speed_m_s", () -> SliderCrank.meanPistonSpeed(2 * crank.radius(), rpm));
        for (int degrees = 0; degrees < 360; degrees++) {
            double angle = degrees * DEGREE;
            String at = name + degrees + " deg: ";
            figures.put(at + "displacement from TDC m", () -> crank.way(angle));
            figures.put(at + "velocity m/s", () -> crank.speed(angle, omega));
            figures.put(at + "acceleration m/s2", () -> crank.acceleration(angle, omega));
            figures.put(at + "acceleration first+second order", () -> crank.accelerationOfTwoOrders(angle, omega));
            figures.put(at + "velocity first+second order", () -> crank.speedOfTwoOrders(angle, omega));
        }
        figures.put(name + "max_speed_m_s", () -> crank.speed(crank.angleOfTopSpeed(), omega));
        figures.put(name + "angle_of_max_speed_deg", () -> crank.angleOfTopSpeed() / DEGREE);
        figures.put(name + "acceleration_TDC = r w^2 (1+lambda)", () -> crank.accelerationAtTop(omega));
        figures.put(name + "acceleration_BDC = -r w^2 (1-lambda)", () -> crank.accelerationAtBottom(omega));
        figures.put(name + "angle_of_zero_acceleration_deg", () -> crank.angleOfTopSpeed() / DEGREE);
        figures.put(name + "angle_zero_accel_two_term_deg", () -> crank.angleOfTopSpeedOfTwoOrders() / DEGREE);
        figures.put(name + "inertia_force_TDC_N", () -> mass * crank.accelerationAtTop(omega));
        figures.put(name + "inertia_force_BDC_N", () -> -mass * crank.accelerationAtBottom(omega));
    }

    private static LongStream seeds() {
        return LongStream.range(0, 30);
    }

    /** Speed and acceleration are the first and second derivative of the way. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void speed_and_acceleration_are_what_the_way_does(long seed) {
        Random random = new Random(seed);
        SliderCrank crank = new SliderCrank(0.02 + 0.06 * random.nextDouble(), 0.1 + 0.1 * random.nextDouble());
        double omega = 100 + 900 * random.nextDouble();
        double angle = 2 * Math.PI * random.nextDouble();
        double step = 1e-4;
        double slope = (crank.way(angle + step) - crank.way(angle - step)) / (2 * step);
        double bend = (crank.way(angle + step) - 2 * crank.way(angle) + crank.way(angle - step)) / (step * step);

        double scale = crank.radius() * omega;
        assertThat(crank.speed(angle, omega)).isCloseTo(slope * omega, within(scale * 1e-7));
        assertThat(crank.acceleration(angle, omega)).isCloseTo(bend * omega * omega, within(scale * omega * 1e-5));
    }

    /** The closed form and the piecewise rule against an adaptive quadrature of F(x)/(E·A(x)) by a general library. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void stretch_is_the_integral_of_pull_over_stiffness(long seed) {
        Random random = new Random(seed);
        double length = 0.1 + 0.1 * random.nextDouble();
        SliderCrank crank = new SliderCrank(0.03 + 0.02 * random.nextDouble(), length);
        RodStretch rod = new RodStretch(crank, 0.3 + 0.4 * random.nextDouble(), 200e9, 7850, length);
        double omega = SliderCrank.omega(4000 + 6000 * random.nextDouble());
        double first = 1e-4 * (1 + 3 * random.nextDouble());
        double last = 1e-4 * (1 + 3 * random.nextDouble());
        TreeMap<Double, Double> areas = new TreeMap<>(Map.of(0.0, first, length, last));
        double unit = crank.radius() * omega * omega;
        IterativeLegendreGaussIntegrator rule = new IterativeLegendreGaussIntegrator(12, 1e-12, 1e-15);
        IterativeLegendreGaussIntegrator within = new IterativeLegendreGaussIntegrator(12, 1e-12, 1e-15);

        double expected = rule.integrate(
                100_000,
                x -> {
                    double rise = (last - first) / length;
                    double inertia = x == 0
                            ? 0
                            : within.integrate(
                                    10_000,
                                    at -> 7850 * (first + rise * at) * unit * (1 + crank.ratio() * (1 - at / length)),
                                    0,
                                    x);
                    double pull = rod.pinEnd() * unit * (1 + crank.ratio()) + inertia;
                    return pull / (200e9 * (first + rise * x));
                },
                0,
                length);

        assertThat(rod.profile(areas, omega)).isCloseTo(expected, within(expected * 1e-9));
        double uniform = rod.uniform(first, omega);
        assertThat(rod.profile(new TreeMap<>(Map.of(length / 3, first)), omega))
                .isCloseTo(uniform, within(uniform * 1e-12));
    }

    /** Stepped: two rods in a row, each under its own pull; the lower carries the upper. */
    @Test
    void a_thinner_shank_stretches_more_where_it_is_thin() {
        TreeMap<Double, Double> waist = new TreeMap<>(Map.of(0.0, AREA, 0.075, AREA / 2, 0.15, AREA));
        assertThat(ROD.profile(waist, FAST)).isGreaterThan(ROD.uniform(AREA, FAST));
        assertThat(ROD.profile(waist, FAST)).isLessThan(ROD.uniform(AREA / 2, FAST));
    }

    /** Shigley's Mechanical Engineering Design, table A-9, cases 5 and 6: in the middle {@code F·l³/(48·E·I)}. */
    @Test
    void a_beam_pulled_in_its_middle_moves_as_the_table_says() {
        Beam beam = new Beam(0.2, 0.05, 205e9);
        double moment = Math.PI * Math.pow(0.05, 4) / 64;
        assertThat(beam.moves(10_000, 0.1, 0.1)).isCloseTo(10_000 * 0.008 / (48 * 205e9 * moment), within(1e-15));
        assertThat(beam.moves(10_000, 0.05, 0.15)).isCloseTo(beam.moves(10_000, 0.15, 0.05), within(1e-15));
        assertThat(beam.moves(10_000, 0.05, 0)).isZero();
    }
}
