package witnessmark.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.LimitRank;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Contradiction;
import witnessmark.fit.result.Proposal;
import witnessmark.fit.result.Term;

/** Checks against the same sums done another way, what is missing, what cannot be, and random sheets. */
class ChecksByHandTest {
    @Test
    void the_nearer_side_decides_squish_and_the_mean_decides_the_ratio() {
        Bench bench = FactsOfTheTradeTest.whole().limit(MeasureKind.CROWN_TO_HEAD, "1.04", null);
        Answer squish = bench.answer(MeasureKind.CROWN_TO_HEAD);
        assertThat(squish.checks()).hasSize(4);
        assertThat(Objects.requireNonNull(squish.nearest()).place().spot()).isEqualTo(Spot.ANTI_THRUST);
        assertThat(Bench.shown(squish.nearest())).isEqualByComparingTo("1.03");
        assertThat(squish.verdict()).isEqualTo(FitVerdict.OUTSIDE);
        assertThat(squish.checks().get(0).verdict()).isEqualTo(FitVerdict.INSIDE);
        // 442.42 swept; 33 + 5.03 + 1.14 + 1.8 left
        double vs = Math.PI / 4 * 85.2 * 85.2 * 77.6 / 1000;
        double vc = 33 + Math.PI / 4 * 86.8 * 86.8 * 0.85 / 1000 + Math.PI / 4 * 85.2 * 85.2 * 0.20 / 1000 + 1.8;
        Check ratio = bench.answer(MeasureKind.COMPRESSION_RATIO).checks().get(0);
        assertThat(Bench.shown(ratio).doubleValue())
                .isCloseTo((vs + vc) / vc, org.assertj.core.api.Assertions.within(6e-4));
        assertThat(ratio.restsOnDesign()).as("its volume says so").isTrue();
    }

    @Test
    void what_is_missing_is_named_and_nothing_is_taken_for_it() {
        Bench bench = FactsOfTheTradeTest.whole().limit(MeasureKind.BIG_END_OVALITY, null, "0.012");
        Answer housing = bench.answer(MeasureKind.BIG_END_OVALITY);
        assertThat(housing.verdict()).isEqualTo(FitVerdict.NOT_MEASURED);
        assertThat(housing.nearest()).isNull();
        assertThat(housing.checks()).hasSize(2).allSatisfy(check -> {
            assertThat(check.value()).isNull();
            assertThat(check.missing()).containsExactly(check.place());
        });
        Answer ratio = new Bench(1, "85", "77", "141")
                .put(MeasureKind.CHAMBER_VOLUME, 1, null, "33")
                .deck(1, "0.2", "0.2")
                .limit(MeasureKind.COMPRESSION_RATIO, null, "12.5")
                .answer(MeasureKind.COMPRESSION_RATIO);
        assertThat(ratio.checks().get(0).missing().stream().map(MeasurePlace::kind))
                .containsExactly(MeasureKind.GASKET_THICKNESS, MeasureKind.GASKET_BORE, MeasureKind.CROWN_VOLUME);
    }

    @Test
    void a_clearance_is_worked_out_of_bore_and_journal_where_they_are_there_and_else_as_measured() {
        Bench bench = new Bench(1, "85", "77", "141")
                .put(MeasureKind.MAIN_CLEARANCE, 1, null, "0.050")
                .put(MeasureKind.MAIN_CLEARANCE, 2, null, "0.055")
                .put(MeasureKind.MAIN_BORE, 1, Spot.UPRIGHT, "54.058")
                .put(MeasureKind.MAIN_JOURNAL, 1, Spot.FRONT_UPRIGHT, "53.998")
                .put(MeasureKind.MAIN_JOURNAL, 1, Spot.REAR_ACROSS, "54.001");
        List<Check> mains = bench.answer(MeasureKind.MAIN_CLEARANCE).checks();
        assertThat(Bench.shown(mains.get(0))).isEqualByComparingTo("0.057");
        assertThat(mains.get(0).terms()).hasSize(2);
        assertThat(Bench.shown(mains.get(1))).isEqualByComparingTo("0.055");
    }

    @Test
    void the_narrowest_limit_decides_and_names_its_source() {
        Bench bench = new Bench(1, "85", "77", "141")
                .put(MeasureKind.CRANK_END_FLOAT, null, null, "0.26")
                .limit(MeasureKind.CRANK_END_FLOAT, null, null, "0.28", null, LimitRank.MAKER)
                .limit(MeasureKind.CRANK_END_FLOAT, null, null, "0.25", null, LimitRank.OWN);
        Check check =
                Objects.requireNonNull(bench.answer(MeasureKind.CRANK_END_FLOAT).nearest());
        assertThat(check.verdict()).isEqualTo(FitVerdict.OUTSIDE);
        assertThat(Objects.requireNonNull(check.bounds().most()).source()).isEqualTo("sheet of own");
        assertThat(check.tooNearToTell()).as("0.01 over, measured to 0.01").isTrue();
    }

    @Test
    void a_figure_at_its_limit_is_inside_and_one_beyond_is_not() {
        for (String[] row : new String[][] {{"0.250", "INSIDE"}, {"0.250001", "OUTSIDE"}}) {
            Check check = Objects.requireNonNull(new Bench(1, "85", "77", "141")
                    .put(MeasureKind.CRANK_END_FLOAT, null, null, row[0])
                    .limit(MeasureKind.CRANK_END_FLOAT, null, "0.25")
                    .answer(MeasureKind.CRANK_END_FLOAT)
                    .nearest());
            assertThat(check.verdict()).isEqualTo(FitVerdict.valueOf(row[1]));
        }
    }

    @Test
    void figures_that_cannot_all_be_right_are_called() {
        Bench bench = new Bench(1, "85", "77", "141")
                .put(MeasureKind.ROD_LENGTH, 1, null, "38.5")
                .put(MeasureKind.GASKET_THICKNESS, null, Spot.RING_FREE, "0.85")
                .put(MeasureKind.GASKET_THICKNESS, null, Spot.RING_CLAMPED, "0.95")
                .put(MeasureKind.GASKET_BORE, 1, Spot.FREE, "86")
                .put(MeasureKind.GASKET_BORE, 1, Spot.TRIAL_CLAMPED, "86.2")
                .put(MeasureKind.BORE, 1, Spot.TOP_ALONG, "85")
                .put(MeasureKind.PISTON, 1, null, "85.1")
                .put(MeasureKind.BIG_END_BORE, 1, Spot.UPRIGHT, "45")
                .put(MeasureKind.PIN_JOURNAL, 1, Spot.FRONT_ACROSS, "45.1")
                .put(MeasureKind.BOLT_BEFORE, 1, Spot.BOLT_A, "48.01")
                .put(MeasureKind.BOLT_AFTER, 1, Spot.BOLT_A, "48.00");
        assertThat(Contradictions.of(bench.sheet()).stream().map(Contradiction::what))
                .containsExactly(
                        Contradiction.What.ROD_NOT_LONGER_THAN_CRANK,
                        Contradiction.What.CLAMPED_THICKER_THAN_FREE,
                        Contradiction.What.CLAMPED_BORE_WIDER_THAN_FREE,
                        Contradiction.What.PISTON_NOT_SMALLER_THAN_BORE,
                        Contradiction.What.JOURNAL_NOT_SMALLER_THAN_BORE,
                        Contradiction.What.BOLT_SHORTER_THAN_BEFORE);
        assertThat(Contradictions.of(FactsOfTheTradeTest.whole().sheet())).isEmpty();
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void every_column_adds_up_by_hand_and_every_verdict_is_that_of_its_bounds(long seed) {
        Sheet sheet = random(new Random(seed));
        for (Answer answer : Checks.of(sheet)) {
            for (Check check : answer.checks()) {
                if (check.value() != null) {
                    if (check.place().kind() == MeasureKind.COMPRESSION_RATIO) {
                        BigDecimal vs = BigDecimal.valueOf(check.terms().get(0).counts());
                        BigDecimal vc = BigDecimal.valueOf(check.terms().get(1).counts());
                        assertThat(Bench.shown(check))
                                .isEqualByComparingTo(vs.add(vc).divide(vc, 4, java.math.RoundingMode.HALF_UP));
                    } else {
                        assertThat(check.terms().stream()
                                        .mapToLong(Term::counts)
                                        .sum())
                                .as("%s", check.place())
                                .isEqualTo(check.value());
                    }
                    assertThat(check.missing()).isEmpty();
                    assertThat(check.verdict()).isEqualTo(check.bounds().verdict(check.value()));
                } else {
                    assertThat(check.missing()).as("%s", check.place()).isNotEmpty();
                }
            }
            boolean outside = answer.checks().stream().anyMatch(check -> check.verdict() == FitVerdict.OUTSIDE);
            assertThat(answer.verdict() == FitVerdict.OUTSIDE).isEqualTo(outside);
            if (outside) {
                assertThat(Objects.requireNonNull(answer.nearest()).verdict()).isEqualTo(FitVerdict.OUTSIDE);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_way_comes_to_what_was_wanted_and_breaks_nothing_that_was_whole(long seed) {
        Random random = new Random(seed * 31);
        Sheet sheet = random(random);
        for (Goal.Kind kind : Goal.Kind.values()) {
            long wanted = kind == Goal.Kind.COMPRESSION_RATIO
                    ? 100_000 + random.nextInt(40_000)
                    : kind == Goal.Kind.CROWN_TO_HEAD ? 800_000 + random.nextInt(500_000) : random.nextInt(400_000);
            for (Proposal way : Ways.to(new Goal(kind, wanted), sheet, List.of())) {
                if (way.possible()) {
                    Check reached = Objects.requireNonNull(way.reached());
                    long off = Objects.requireNonNull(reached.value()) - wanted;
                    assertThat(off).as("%s by %s", kind, way.work()).isBetween(-2L, 2L);
                    assertThat(kind == Goal.Kind.COMPRESSION_RATIO ? off : -off)
                            .as("never past what a rule allows")
                            .isLessThanOrEqualTo(kind == Goal.Kind.COMPRESSION_RATIO ? 1L : 0L);
                    assertThat(way.work().depth()).isNotNegative();
                    assertThat(way.work().cuts().values()).allMatch(cut -> cut >= 0 && cut <= 500_000);
                    assertThat(outside(way.after())).isSubsetOf(outside(Checks.of(sheet)));
                } else {
                    assertThat(way.against()).isNotEmpty();
                }
            }
        }
    }

    private static List<MeasurePlace> outside(List<Answer> answers) {
        return answers.stream()
                .flatMap(answer -> answer.checks().stream())
                .filter(check -> check.verdict() == FitVerdict.OUTSIDE)
                .map(Check::place)
                .toList();
    }

    private static Sheet random(Random random) {
        int cylinders = 1 + random.nextInt(6);
        Bench bench = new Bench(cylinders, "85.2", "77.6", "141.5")
                .designed(MeasureKind.GASKET_THICKNESS, Spot.RING_CLAMPED, figure(random, 0.6, 1.2, 2))
                .designed(MeasureKind.GASKET_BORE, Spot.TRIAL_CLAMPED, figure(random, 85, 88, 1))
                .designed(MeasureKind.GASKET_BORE, Spot.FREE, figure(random, 86, 88, 1))
                .designed(MeasureKind.OPENING_AREA, null, "4600")
                .designed(MeasureKind.TOP_LAND, null, figure(random, 84, 85, 2))
                .limit(MeasureKind.CROWN_TO_HEAD, "0.9", null)
                .limit(MeasureKind.COMPRESSION_RATIO, null, null, "12.5", null, LimitRank.RULE_BOOK)
                .limit(MeasureKind.CROWN_CUT, null, "0.5")
                .limit(MeasureKind.PISTON_TO_WALL, "0.05", "0.12")
                .limit(MeasureKind.HEAD_THICKNESS, "117.4", null)
                .limit(MeasureKind.VALVE_TO_PISTON_EXHAUST, "2.5", null);
        for (MeasureKind kind : List.of(
                MeasureKind.DECK_CLEARANCE,
                MeasureKind.BORE,
                MeasureKind.PISTON,
                MeasureKind.CHAMBER_VOLUME,
                MeasureKind.CROWN_VOLUME,
                MeasureKind.HEAD_THICKNESS,
                MeasureKind.VALVE_TO_PISTON_EXHAUST,
                MeasureKind.MAIN_JOURNAL)) {
            int skip = random.nextInt(4) == 0 ? 12 : 1_000;
            for (MeasurePlace place : bench.sheet().places(kind)) {
                if (random.nextInt(skip) > 0) {
                    bench.put(kind, place.number(), place.spot(), figureOf(random, kind));
                }
            }
        }
        return bench.sheet();
    }

    private static String figureOf(Random random, MeasureKind kind) {
        return switch (kind) {
            case DECK_CLEARANCE -> figure(random, -0.1, 0.4, 2);
            case BORE -> figure(random, 85.19, 85.22, 3);
            case PISTON -> figure(random, 85.10, 85.14, 3);
            case CHAMBER_VOLUME -> figure(random, 31, 36, 1);
            case CROWN_VOLUME -> figure(random, -2, 3, 1);
            case HEAD_THICKNESS -> figure(random, 117.4, 118, 2);
            case VALVE_TO_PISTON_EXHAUST -> figure(random, 2.5, 3, 2);
            default -> figure(random, 53.99, 54.01, 3);
        };
    }

    private static String figure(Random random, double from, double to, int decimals) {
        return BigDecimal.valueOf(from + (to - from) * random.nextDouble())
                .setScale(decimals, java.math.RoundingMode.HALF_UP)
                .toPlainString();
    }

    @Test
    void what_a_column_rests_on_is_said() {
        Check squish = FactsOfTheTradeTest.whole()
                .answer(MeasureKind.CROWN_TO_HEAD)
                .checks()
                .get(0);
        assertThat(squish.terms().stream().map(term -> term.given().basis()))
                .containsExactly(Basis.MEASURED, Basis.AS_DESIGNED);
    }
}
