package witnessmark.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.GasketClass;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Pattern;
import witnessmark.fit.result.Proposal;
import witnessmark.fit.result.Work;

/** What builders know: common practice, no source. */
class FactsOfTheTradeTest {
    @Test
    void a_ring_that_cleared_when_laid_on_hangs_over_the_crown_by_three_tenths_a_side_once_it_is_clamped() {
        Bench bench = new Bench(1, "74.0", "60", "110")
                .put(MeasureKind.TOP_LAND, 1, null, "73.5")
                .put(MeasureKind.GASKET_BORE, 1, Spot.FREE, "74.2")
                .put(MeasureKind.GASKET_BORE, 1, Spot.TRIAL_CLAMPED, "72.9")
                .put(MeasureKind.BORE, 1, Spot.TOP_ACROSS, "73.5")
                .put(MeasureKind.PISTON, 1, null, "73.5");

        Answer over = bench.answer(MeasureKind.RING_OVER_CROWN);

        assertThat(over.checks()).hasSize(2);
        assertThat(over.checks().get(0).verdict()).isEqualTo(FitVerdict.INSIDE);
        assertThat(over.checks().get(0).value()).isNegative();
        assertThat(over.checks().get(1).verdict()).isEqualTo(FitVerdict.OUTSIDE);
        assertThat(Bench.shown(over.checks().get(1))).isEqualByComparingTo("0.3");
        assertThat(over.nearest()).isEqualTo(over.checks().get(1));
        assertThat(over.verdict()).isEqualTo(FitVerdict.OUTSIDE);
    }

    @Test
    void a_wanted_twentieth_below_the_deck_is_a_cut_for_each_crown() {
        Bench bench = pistons().limit(MeasureKind.CROWN_CUT, null, "0.5");

        List<Proposal> ways = Ways.to(goal("0.05"), bench.sheet(), List.of());

        Proposal cut = ways.get(0);
        assertThat(cut.possible()).isTrue();
        assertThat(cut.work().kind()).isEqualTo(Work.Kind.CROWN_CUT);
        assertThat(cut.work().cuts()).isEqualTo(Map.of(1, 130_000L, 2, 80_000L, 3, 30_000L, 4, 100_000L));
        assertThat(cut.after().get(0).kind()).isEqualTo(MeasureKind.DECK_MEAN);
        assertThat(cut.after().get(0).checks())
                .allSatisfy(check -> assertThat(Bench.shown(check)).isEqualByComparingTo("0.05"));
        assertThat(ways.get(1).against().get(0).why()).isEqualTo(Proposal.Why.ADDS_MATERIAL);
    }

    @Test
    void up_to_half_a_millimetre_comes_off_a_crown_only_where_its_maker_says_so() {
        Bench silent = pistons();
        Bench little = pistons().limit(MeasureKind.CROWN_CUT, null, "0.1");

        assertThat(why(silent)).isEqualTo(Proposal.Why.NOT_ALLOWED);
        assertThat(why(little)).isEqualTo(Proposal.Why.MORE_THAN_ALLOWED);
        assertThat(Ways.to(
                                goal("0.42"),
                                pistons()
                                        .limit(MeasureKind.CROWN_CUT, null, "0.5")
                                        .sheet(),
                                List.of())
                        .get(0)
                        .possible())
                .isTrue();
        assertThat(Ways.to(
                        goal("0.421"),
                        pistons().limit(MeasureKind.CROWN_CUT, null, "0.5").sheet(),
                        List.of()))
                .noneMatch(Proposal::possible);
    }

    private static Proposal.Why why(Bench bench) {
        return Ways.to(goal("0.05"), bench.sheet(), List.of()).stream()
                .filter(way -> way.work().kind() == Work.Kind.CROWN_CUT)
                .findFirst()
                .orElseThrow()
                .against()
                .get(0)
                .why();
    }

    /** Four pistons proud and below. */
    private static Bench pistons() {
        return new Bench(4, "85", "77", "141")
                .deck(1, "-0.07", "-0.09")
                .deck(2, "-0.02", "-0.04")
                .deck(3, "0.03", "0.01")
                .deck(4, "-0.05", "-0.05");
    }

    private static Goal goal(String mm) {
        return new Goal(Goal.Kind.DECK_CLEARANCE, Bench.parts(MeasureKind.DECK_MEAN, mm));
    }

    @Test
    void layers_of_steel_want_a_finer_face_than_composite_and_a_face_too_rough_is_called_before_clamping() {
        Bench rough = new Bench(4, "85", "77", "141")
                .put(MeasureKind.HEAD_RA, null, Spot.MIDDLE, "1.8")
                .put(MeasureKind.HEAD_RZ, null, Spot.MIDDLE, "7");

        assertThat(rough.gasket(GasketClass.COMPOSITE)
                        .answer(MeasureKind.HEAD_RA)
                        .verdict())
                .isEqualTo(FitVerdict.INSIDE);
        assertThat(rough.gasket(GasketClass.MULTI_LAYER_STEEL)
                        .answer(MeasureKind.HEAD_RA)
                        .verdict())
                .isEqualTo(FitVerdict.OUTSIDE);
        assertThat(rough.gasket(GasketClass.MULTI_LAYER_STEEL)
                        .answer(MeasureKind.HEAD_RZ)
                        .verdict())
                .as("Ra and Rz are two figures, never turned into each other")
                .isEqualTo(FitVerdict.INSIDE);
        Bench smooth = new Bench(4, "85", "77", "141").put(MeasureKind.HEAD_RA, null, Spot.MIDDLE, "0.4");
        assertThat(smooth.gasket(GasketClass.COMPOSITE)
                        .answer(MeasureKind.HEAD_RA)
                        .verdict())
                .as("a soft face creeps on too smooth a one")
                .isEqualTo(FitVerdict.OUTSIDE);
        assertThat(smooth.gasket(GasketClass.MULTI_LAYER_STEEL)
                        .answer(MeasureKind.HEAD_RA)
                        .verdict())
                .isEqualTo(FitVerdict.INSIDE);
    }

    @Test
    void a_limit_somebody_set_takes_the_place_of_what_the_trade_holds_to() {
        Bench bench = new Bench(4, "85", "77", "141")
                .gasket(GasketClass.MULTI_LAYER_STEEL)
                .put(MeasureKind.HEAD_RA, null, Spot.MIDDLE, "1.0")
                .limit(MeasureKind.HEAD_RA, null, "0.8");
        assertThat(bench.answer(MeasureKind.HEAD_RA).verdict()).isEqualTo(FitVerdict.OUTSIDE);
    }

    @Test
    void the_row_says_where_to_look() {
        assertThat(shape("0.20", "0.21", "0.20", "0.19")).isEqualTo(Pattern.Shape.EVEN);
        assertThat(shape("0.10", "0.11", "0.10", "0.09")).isEqualTo(Pattern.Shape.ALL_LOW);
        assertThat(shape("0.30", "0.31", "0.30", "0.29")).isEqualTo(Pattern.Shape.ALL_HIGH);
        assertThat(shape("0.14", "0.18", "0.22", "0.26")).isEqualTo(Pattern.Shape.RAMP);
        assertThat(shape("0.26", "0.22", "0.18", "0.14")).isEqualTo(Pattern.Shape.RAMP);
        assertThat(shape("0.20", "0.21", "0.09", "0.20")).isEqualTo(Pattern.Shape.ONE_APART);
        assertThat(shape("0.14", "0.26", "0.18", "0.22")).isEqualTo(Pattern.Shape.UNEVEN);
        Answer apart = row("0.20", "0.21", "0.09", "0.20").answer(MeasureKind.DECK_MEAN);
        assertThat(apart.pattern()).isEqualTo(new Pattern(Pattern.Shape.ONE_APART, 3));
    }

    private static Pattern.Shape shape(String... row) {
        Pattern pattern = row(row).answer(MeasureKind.DECK_MEAN).pattern();
        return java.util.Objects.requireNonNull(pattern).shape();
    }

    private static Bench row(String... row) {
        Bench bench = new Bench(row.length, "85", "77", "141")
                .designed(MeasureKind.DECK_CLEARANCE, null, "0.20")
                .limit(MeasureKind.DECK_SPREAD, null, "0.05");
        for (int i = 0; i < row.length; i++) {
            bench.deck(i + 1, row[i], row[i]);
        }
        return bench;
    }

    @Test
    void a_head_skim_leaves_squish_and_takes_from_ratio_and_valves_and_a_deck_skim_takes_one_for_one() {
        Sheet sheet = whole().sheet();
        Sheet head = new Rework(sheet).after(Work.headSkim(100_000));
        Sheet deck = new Rework(sheet).after(Work.deckSkim(100_000));
        assertThat(values(head, MeasureKind.CROWN_TO_HEAD)).isEqualTo(values(sheet, MeasureKind.CROWN_TO_HEAD));
        assertThat(first(deck, MeasureKind.CROWN_TO_HEAD)).isEqualTo(first(sheet, MeasureKind.CROWN_TO_HEAD) - 100_000);
        for (Sheet next : List.of(head, deck)) {
            assertThat(first(next, MeasureKind.COMPRESSION_RATIO))
                    .isGreaterThan(first(sheet, MeasureKind.COMPRESSION_RATIO));
            assertThat(first(next, MeasureKind.VALVE_TO_PISTON_INLET))
                    .isEqualTo(first(sheet, MeasureKind.VALVE_TO_PISTON_INLET) - 100_000);
        }
        assertThat(first(head, MeasureKind.HEAD_THICKNESS))
                .isEqualTo(first(sheet, MeasureKind.HEAD_THICKNESS) - 100_000);
        assertThat(first(deck, MeasureKind.HEAD_THICKNESS)).isEqualTo(first(sheet, MeasureKind.HEAD_THICKNESS));
    }

    @Test
    void a_way_that_breaks_another_limit_is_shut_and_says_which() {
        Bench bench = whole().limit(MeasureKind.VALVE_TO_PISTON_INLET, "2.25", null);
        long wanted = first(bench.sheet(), MeasureKind.COMPRESSION_RATIO) + 2_500;

        List<Proposal> ways = Ways.to(new Goal(Goal.Kind.COMPRESSION_RATIO, wanted), bench.sheet(), List.of());

        assertThat(ways).hasSize(2).noneMatch(Proposal::possible);
        assertThat(ways)
                .allSatisfy(way -> assertThat(way.against()).anySatisfy(against -> {
                    assertThat(against.why()).isEqualTo(Proposal.Why.OUTSIDE_AFTER);
                    assertThat(against.kind()).isEqualTo(MeasureKind.VALVE_TO_PISTON_INLET);
                }));
    }

    static Bench whole() {
        Bench bench = new Bench(2, "85.2", "77.6", "141.5")
                .designed(MeasureKind.GASKET_THICKNESS, Spot.RING_CLAMPED, "0.85")
                .designed(MeasureKind.GASKET_BORE, Spot.TRIAL_CLAMPED, "86.8")
                .designed(MeasureKind.OPENING_AREA, null, "4600")
                .designed(MeasureKind.CROWN_VOLUME, null, "1.8")
                .limit(MeasureKind.HEAD_THICKNESS, "117.4", null)
                .limit(MeasureKind.VALVE_TO_PISTON_INLET, "2", null);
        for (int cylinder = 1; cylinder <= 2; cylinder++) {
            bench.deck(cylinder, "0.22", "0.18")
                    .put(MeasureKind.CHAMBER_VOLUME, cylinder, null, "33")
                    .put(MeasureKind.VALVE_TO_PISTON_INLET, cylinder, Spot.VALVE_A, "2.3");
        }
        for (Spot corner : MeasureKind.HEAD_THICKNESS.spots()) {
            bench.put(MeasureKind.HEAD_THICKNESS, null, corner, "117.87");
        }
        return bench;
    }

    private static List<Long> values(Sheet sheet, MeasureKind kind) {
        return Bench.answer(sheet, kind).checks().stream()
                .map(check -> java.util.Objects.requireNonNull(check.value()))
                .toList();
    }

    private static long first(Sheet sheet, MeasureKind kind) {
        return values(sheet, kind).get(0);
    }
}
