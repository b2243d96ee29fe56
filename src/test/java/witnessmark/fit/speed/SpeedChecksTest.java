package witnessmark.fit.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Metal;
import witnessmark.domain.SpeedFigures;
import witnessmark.domain.Spot;
import witnessmark.fit.Bench;
import witnessmark.fit.result.AtSpeed;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Closing;
import witnessmark.fit.result.MarkReading;
import witnessmark.fit.result.SpeedAnswer;
import witnessmark.mechanics.RodStretch;
import witnessmark.mechanics.SliderCrank;
import witnessmark.quantity.Length;
import witnessmark.quantity.Temperature;

/** An invented small four at speed. */
class SpeedChecksTest {
    private static final int RED_LINE = 8200;

    private static Bench four() {
        Bench bench = new Bench(4, "85.2", "77.6", "141.5").mains(5).stood(HowStood.PUSHED_DOWN);
        for (int cylinder = 1; cylinder <= 4; cylinder++) {
            bench.deck(cylinder, "0.20", "0.14")
                    .put(MeasureKind.PISTON_MASS, cylinder, null, "318")
                    .put(MeasureKind.PIN_MASS, cylinder, null, "92")
                    .put(MeasureKind.RINGS_MASS, cylinder, null, "30")
                    .put(MeasureKind.ROD_SMALL_MASS, cylinder, null, "146")
                    .put(MeasureKind.COMPRESSION_HEIGHT, cylinder, null, "30")
                    .put(MeasureKind.BIG_END_CLEARANCE, cylinder, null, "0.050")
                    .put(MeasureKind.PIN_IN_BOSS, cylinder, null, "0.010")
                    .put(MeasureKind.PIN_IN_BUSH, cylinder, null, "0.015");
        }
        for (int main = 1; main <= 5; main++) {
            bench.put(MeasureKind.MAIN_CLEARANCE, main, null, "0.055");
        }
        return bench.put(MeasureKind.GASKET_THICKNESS, null, Spot.RING_CLAMPED, "0.85")
                .put(MeasureKind.ROD_AREA, null, null, "160")
                .put(MeasureKind.MAIN_JOURNAL, 1, Spot.FRONT_UPRIGHT, "54");
    }

    private static SpeedFigures figures(Metal block, @Nullable String spacing) {
        return new SpeedFigures(
                new Id<>(new UUID(1, 1)),
                block,
                Metal.STEEL,
                Metal.STEEL,
                Metal.ALUMINIUM,
                celsius("90"),
                celsius("95"),
                celsius("110"),
                celsius("190"),
                celsius("30"),
                celsius("110"),
                spacing == null ? null : Length.ofMillimetres(new BigDecimal(spacing)),
                Length.ofMillimetres(new BigDecimal("0.30")),
                "builder");
    }

    private static Temperature celsius(String degrees) {
        return Temperature.ofCelsius(new BigDecimal(degrees));
    }

    private static SpeedAnswer answer(Bench bench, @Nullable SpeedFigures figures) {
        return SpeedChecks.of(bench.sheet(), figures, RED_LINE, null, 20);
    }

    private static AtSpeed nearer(SpeedAnswer answer) {
        return answer.hot().stream()
                .filter(side -> side.place().equals(new MeasurePlace(MeasureKind.CROWN_TO_HEAD, 1, Spot.ANTI_THRUST)))
                .findFirst()
                .orElseThrow();
    }

    private static Closing closing(AtSpeed side, Closing.Kind kind) {
        return side.closings().stream()
                .filter(closing -> closing.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    /**
     * By hand: rω² 28 611 m/s²; stretch 28 611 × 0.1415 / (207·10⁹ × 160·10⁻⁶) × (0.440 × 1.2742 + 0.1777 × 0.5914) is
     * 0.0814 mm; clearances 0.050 + 0.055 + 0.025; growth 11.7·10⁻⁶ × (38.8 × 75 + 141.5 × 90) + 21.5·10⁻⁶ × 30 × 170 −
     * 10.8·10⁻⁶ × 210.47 × 70 is 0.13358 mm.
     */
    @Test
    void what_closes_adds_up_by_hand() {
        AtSpeed side = nearer(answer(four(), figures(Metal.CAST_IRON, null)));

        assertThat(closing(side, Closing.Kind.STRETCH).millimetres()).isCloseTo(0.0814, within(0.0002));
        assertThat(closing(side, Closing.Kind.TAKE_UP).millimetres()).isCloseTo(0.130, within(1e-9));
        assertThat(closing(side, Closing.Kind.GROWTH).millimetres()).isCloseTo(0.13358, within(0.00005));
        assertThat(side.headAt(0).likely())
                .isCloseTo(0.99 - 0.130 - closing(side, Closing.Kind.GROWTH).millimetres(), within(1e-9));
        assertThat(side.headAt(RED_LINE).likely()).isCloseTo(0.99 - 0.345, within(0.001));
        assertThat(side.headAt(RED_LINE).low()).isLessThan(side.headAt(RED_LINE).likely());
        assertThat(side.most(RED_LINE).orElseThrow().kind()).isEqualTo(Closing.Kind.GROWTH);
    }

    /**
     * By hand, revved at 30 °C with the rods ten degrees above the block: 11.7·10⁻⁶ × (38.8 × 10 + 141.5 × 20) + 21.5·10⁻⁶ ×
     * 30 × 90 − 10.8·10⁻⁶ × 210.47 × 10 is 0.07297 mm.
     */
    @Test
    void revved_cold_it_grows_less() {
        SpeedAnswer answer = answer(four(), figures(Metal.CAST_IRON, null));
        AtSpeed cold = answer.cold().stream()
                .filter(side -> side.place().equals(nearer(answer).place()))
                .findFirst()
                .orElseThrow();
        assertThat(closing(cold, Closing.Kind.GROWTH).millimetres()).isCloseTo(0.07297, within(0.00005));
        assertThat(answer.isCold(cold)).isTrue();
    }

    /** Each throw is held by the main bearings before and behind it: their mean is what it takes up. */
    @Test
    void a_throw_takes_up_the_clearance_of_its_own_main_bearings() {
        Bench bench = four();
        String[] mains = {"0.050", "0.070", "0.060", "0.080", "0.040"};
        for (int main = 1; main <= 5; main++) {
            bench.put(MeasureKind.MAIN_CLEARANCE, main, null, mains[main - 1]);
        }
        SpeedAnswer answer = answer(bench, figures(Metal.CAST_IRON, null));
        double[] means = {0.060, 0.065, 0.070, 0.060};
        for (AtSpeed side : answer.hot()) {
            assertThat(closing(side, Closing.Kind.TAKE_UP).millimetres())
                    .as("cylinder %d", side.place().number())
                    .isCloseTo(0.050 + means[Objects.requireNonNull(side.place().number()) - 1] + 0.025, within(1e-9));
        }
    }

    /** Common practice, no source: with an iron block growth closes about as much as stretch, with an aluminium one it opens. */
    @Test
    void the_block_decides_whether_heat_closes_or_opens() {
        double stretch = closing(nearer(answer(four(), figures(Metal.CAST_IRON, null))), Closing.Kind.STRETCH)
                .millimetres();
        double iron = closing(nearer(answer(four(), figures(Metal.CAST_IRON, null))), Closing.Kind.GROWTH)
                .millimetres();
        double aluminium = closing(nearer(answer(four(), figures(Metal.ALUMINIUM, null))), Closing.Kind.GROWTH)
                .millimetres();
        assertThat(iron).isBetween(stretch / 2, 2 * stretch);
        assertThat(aluminium).isNegative();
    }

    /**
     * Common practice, no source: crowns 0.05 mm proud at rest whose marks go well deeper are explained at racing speed,
     * for a small four with steel rods, by hundredths to a tenth of stretch plus take-up.
     */
    @Test
    void marks_deeper_than_the_crowns_stood_proud_are_explained_at_racing_speed() {
        Bench bench = four();
        for (int cylinder = 1; cylinder <= 4; cylinder++) {
            bench.deck(cylinder, "-0.05", "-0.05").put(MeasureKind.CROWN_MARK, cylinder, null, "0.20");
        }
        AtSpeed side = nearer(answer(bench, figures(Metal.CAST_IRON, null)));
        double stretch = closing(side, Closing.Kind.STRETCH).millimetres();
        assertThat(stretch).isBetween(0.02, 0.12);
        assertThat(stretch + closing(side, Closing.Kind.TAKE_UP).millimetres()).isBetween(0.15, 0.30);

        MarkReading marks = Marks.of(bench.sheet()).orElseThrow();
        assertThat(marks.fits().get(0).how()).isEqualTo(MarkReading.How.ALIKE_IN_ALL);
        assertThat(marks.fits().get(0).amount()).isCloseTo(0.15, within(1e-9));
        assertThat(-side.deckAt(RED_LINE).low()).isGreaterThan(0.15);
    }

    /** Common practice, no source: deeper marks at pins far from a main bearing fit bending, not stretch. */
    @Test
    void deeper_marks_far_from_a_main_bearing_fit_bending() {
        Bench bench = four().mains(2);
        String[] marks = {"0.02", "0.15", "0.16", "0.02"};
        for (int cylinder = 1; cylinder <= 4; cylinder++) {
            bench.deck(cylinder, "0.00", "0.00").put(MeasureKind.CROWN_MARK, cylinder, null, marks[cylinder - 1]);
        }
        MarkReading reading = Marks.of(bench.sheet()).orElseThrow();
        assertThat(reading.fits().get(0).how()).isEqualTo(MarkReading.How.BENDING);
        assertThat(reading.toldApart()).isTrue();
    }

    @Test
    void one_deep_mark_is_one_loose_bearing_and_marks_alike_are_not_told_apart_from_it() {
        Bench bench = four();
        for (int cylinder = 1; cylinder <= 4; cylinder++) {
            bench.deck(cylinder, "0.10", "0.10")
                    .put(MeasureKind.CROWN_MARK, cylinder, null, cylinder == 3 ? "0.30" : "0.05");
        }
        MarkReading reading = Marks.of(bench.sheet()).orElseThrow();
        assertThat(reading.fits().get(0).how()).isEqualTo(MarkReading.How.ONE_APART);
        assertThat(reading.fits().get(0).cylinder()).isEqualTo(3);
        assertThat(reading.toldApart()).isTrue();

        Bench alike = bench.put(MeasureKind.CROWN_MARK, 3, null, "0.06");
        assertThat(Marks.of(alike.sheet()).orElseThrow().toldApart()).isFalse();
    }

    @Test
    void clearances_count_as_far_as_the_deck_was_read_without_them() {
        assertThat(takeUp(HowStood.PUSHED_DOWN)).isCloseTo(0.130, within(1e-9));
        assertThat(takeUp(HowStood.PULLED_UP)).isZero();
        SpeedAnswer unsaid = answer(restood(HowStood.NOT_SAID), figures(Metal.CAST_IRON, null));
        Closing between = closing(nearer(unsaid), Closing.Kind.TAKE_UP);
        assertThat(between.millimetres()).isCloseTo(0.065, within(1e-9));
        assertThat(between.standard()).isGreaterThan(0.065 / 2);
        assertThat(unsaid.taken()).contains(SpeedAnswer.Taken.HOW_IT_STOOD);
    }

    private static Bench restood(HowStood how) {
        Bench bench = four().stood(how);
        for (int cylinder = 1; cylinder <= 4; cylinder++) {
            bench.deck(cylinder, "0.20", "0.14");
        }
        return bench;
    }

    private static double takeUp(HowStood how) {
        return closing(nearer(answer(restood(how), figures(Metal.CAST_IRON, null))), Closing.Kind.TAKE_UP)
                .millimetres();
    }

    /** No section: 0.10 ± 0.05 mm, and said so; what is not there is named and in no figure. */
    @Test
    void what_is_not_known_is_taken_as_usual_or_named() {
        Bench bare = new Bench(1, "85.2", "77.6", "141.5")
                .deck(1, "0.2", "0.2")
                .put(MeasureKind.GASKET_THICKNESS, null, Spot.RING_CLAMPED, "0.85");
        SpeedAnswer answer = answer(bare, null);
        AtSpeed side = answer.hot().get(0);
        Closing stretch = closing(side, Closing.Kind.STRETCH);
        assertThat(stretch.millimetres()).isEqualTo(0.10);
        assertThat(stretch.standard()).isCloseTo(0.05 / Math.sqrt(3), within(1e-12));
        assertThat(stretch.basis()).isEqualTo(Basis.ASSUMED);
        assertThat(answer.taken()).contains(SpeedAnswer.Taken.STRETCH, SpeedAnswer.Taken.TEMPERATURES);
        assertThat(answer.lacks())
                .contains(
                        SpeedAnswer.Lack.COMPRESSION_HEIGHT,
                        SpeedAnswer.Lack.BIG_END_CLEARANCE,
                        SpeedAnswer.Lack.MAIN_SPACING);
        assertThat(side.closings()).hasSize(2);
        assertThat(SpeedChecks.of(bare.sheet(), null, null, null, 20).lacks()).contains(SpeedAnswer.Lack.RED_LINE);
    }

    /** What goes with speed goes with its square, so that contact stands at {@code reference · √((h − A)/B)}. */
    @Test
    void contact_is_where_the_closed_form_says() {
        AtSpeed side = new AtSpeed(
                new MeasurePlace(MeasureKind.CROWN_TO_HEAD, 1, Spot.THRUST),
                8000,
                0.20,
                0,
                0.85,
                0,
                0.3,
                List.of(
                        new Closing(Closing.Kind.STRETCH, 0.08, 0, Basis.MEASURED),
                        new Closing(Closing.Kind.TAKE_UP, 0.10, 0, Basis.MEASURED)));
        double exact = 8000 * Math.sqrt((0.20 - 0.10) / 0.08);
        AtSpeed.Contact contact = side.contact(12_000);
        assertThat(contact.likely()).isCloseTo(exact, within(0.001));
        assertThat(contact.notBefore()).isCloseTo(contact.sureBy(), within(0.001));
        assertThat(side.contact(exact - 1).likely()).isNull();
        assertThat(side.ringInTheWay()).isTrue();
    }

    /** Both ends of contact are where a walk up the band first meets the crown: no halving, no closed form. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void contact_is_where_a_walk_up_the_band_meets_it(long seed) {
        Random random = new Random(seed);
        AtSpeed side = new AtSpeed(
                new MeasurePlace(MeasureKind.CROWN_TO_HEAD, 1, Spot.THRUST),
                8000,
                0.10 + 0.10 * random.nextDouble(),
                0.01 * random.nextDouble(),
                0.85,
                0.01,
                0.3,
                List.of(
                        new Closing(
                                Closing.Kind.STRETCH,
                                0.10 + 0.05 * random.nextDouble(),
                                0.02 * random.nextDouble(),
                                Basis.WORKED_OUT),
                        new Closing(Closing.Kind.TAKE_UP, 0.05, 0.01 * random.nextDouble(), Basis.WORKED_OUT)));
        double top = 14_000;
        AtSpeed.Contact contact = side.contact(top);
        assertThat(firstMet(top, rpm -> side.deckAt(rpm).low())).isEqualTo(rounded(contact.notBefore()));
        assertThat(firstMet(top, rpm -> side.deckAt(rpm).likely())).isEqualTo(rounded(contact.likely()));
        assertThat(firstMet(top, rpm -> side.deckAt(rpm).high())).isEqualTo(rounded(contact.sureBy()));
    }

    /** The first whole speed at which nothing is left; null for none. */
    private static @Nullable Long firstMet(double top, DoubleUnaryOperator left) {
        for (long rpm = 0; rpm <= top; rpm++) {
            if (left.applyAsDouble(rpm) < 0) {
                return rpm;
            }
        }
        return null;
    }

    private static @Nullable Long rounded(@Nullable Double rpm) {
        return rpm == null ? null : Long.valueOf((long) Math.ceil(rpm));
    }

    /** What an answer comes to, at each bound: touching first, then what is wanted, then that nobody said. */
    @Test
    void an_answer_says_how_it_comes_out() {
        assertThat(verdict(0.30, 0.31, 0)).isEqualTo(SpeedAnswer.Verdict.TOUCHES);
        assertThat(verdict(0.05, 0.20, 0.06)).isEqualTo(SpeedAnswer.Verdict.NEAR);
        assertThat(verdict(null, 0.25, 0.05)).isEqualTo(SpeedAnswer.Verdict.NEAR);
        assertThat(verdict(0.30, 0.01, 0)).isEqualTo(SpeedAnswer.Verdict.NEAR);
        assertThat(verdict(0.30, -0.01, 0)).isEqualTo(SpeedAnswer.Verdict.ROOM);
        assertThat(verdict(null, 0.01, 0)).isEqualTo(SpeedAnswer.Verdict.NO_MARGIN);
        assertThat(SpeedChecks.of(four().sheet(), null, null, null, 20).verdict())
                .as("at no speed")
                .isEqualTo(SpeedAnswer.Verdict.NOT_KNOWN);
    }

    /** Of a side that has 0.60 mm at rest and is left with 0.30 mm less a further closing. */
    private static SpeedAnswer.Verdict verdict(@Nullable Double margin, double closes, double standard) {
        AtSpeed side = new AtSpeed(
                new MeasurePlace(MeasureKind.CROWN_TO_HEAD, 1, Spot.THRUST),
                RED_LINE,
                0.10,
                0,
                0.20,
                0,
                null,
                List.of(new Closing(Closing.Kind.STRETCH, closes, standard, Basis.MEASURED)));
        SpeedAnswer all = answer(four(), null);
        return new SpeedAnswer(
                        List.of(side), List.of(), RED_LINE, null, all.lacks(), all.taken(), all.conditions(), margin)
                .verdict();
    }

    private static LongStream seeds() {
        return LongStream.range(0, 6);
    }

    /** First order against a simulation of every input within its half-width (JCGM 101:2008). */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void the_band_is_that_of_a_simulation(long seed) {
        Random random = new Random(seed);
        AtSpeed side = nearer(answer(four(), figures(Metal.CAST_IRON, null)));
        SliderCrank crank = new SliderCrank(0.0388, 0.1415);
        double omega = SliderCrank.omega(RED_LINE);
        StreamingStatistics heads = new StreamingStatistics();
        DoubleSupplier one = () -> 2 * random.nextDouble() - 1;
        double[] alphas = {11.7e-6, 11.7e-6, 21.5e-6, 10.8e-6};
        double[] warmer = {75, 90, 170, 70};
        double[] lengths = {38.8, 141.5, 30, 38.8 + 141.5 + 30 + 0.17};
        int[] signs = {1, 1, 1, -1};
        IntStream.range(0, 200_000).forEach(i -> {
            double mass = 0.440 * (1 + 0.02 * one.getAsDouble());
            double modulus = 207e9 * (1 + 0.03 * one.getAsDouble());
            double area = 160e-6 * (1 + 0.05 * one.getAsDouble());
            double stretch = 1000 * new RodStretch(crank, mass, modulus, 7850, 0.1415).uniform(area, omega);
            double takeUp = 0.130 + 0.006 * one.getAsDouble() + 0.006 * one.getAsDouble();
            double growth = 0;
            for (int part = 0; part < 4; part++) {
                growth += signs[part]
                        * alphas[part]
                        * (1 + 0.08 * one.getAsDouble())
                        * lengths[part]
                        * (warmer[part] + 15 * one.getAsDouble());
            }
            double deck = 0.14 + 0.010 * one.getAsDouble();
            double gasket = 0.85 + 0.010 * one.getAsDouble();
            heads.addValue(deck + gasket - stretch - takeUp - growth);
        });
        AtSpeed.Band band = side.headAt(RED_LINE);
        assertThat(band.likely()).isCloseTo(heads.getMean(), within(0.001));
        assertThat((band.high() - band.low()) / 4)
                .isCloseTo(heads.getStandardDeviation(), within(0.02 * heads.getStandardDeviation()));
    }

    /**
     * By hand: (0.440 + 0.146) kg × 28 611 × 1.2742 m/s² is 21 363 N; a bar of 54 mm between supports 94 mm apart gives by
     * F·L³/(48·E·I) (Roark, table 8.1) 0.00428 mm, the webs four times as much.
     *
     * <p>A crank is pulled to where it gives most; more throws between two main bearings give more.
     */
    @Test
    void a_crank_bends_more_where_its_main_bearings_are_further_apart() {
        double five = closing(nearer(answer(four(), figures(Metal.CAST_IRON, "94"))), Closing.Kind.BENDING)
                .millimetres();
        double three = closing(nearer(answer(four().mains(3), figures(Metal.CAST_IRON, "188"))), Closing.Kind.BENDING)
                .millimetres();
        assertThat(five).isCloseTo(0.0171, within(0.0002));
        assertThat(three).isGreaterThan(2 * five);
    }
}
