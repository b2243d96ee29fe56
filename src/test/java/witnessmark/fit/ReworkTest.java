package witnessmark.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Proposal;
import witnessmark.fit.result.Work;

/**
 * A sheet after a skim, against case V2 of the outside checks: definition {@code (Vs + Vc)/Vc} (Heywood 1988, equation
 * 2.1), worked out by a spreadsheet. The sheet keeps ratios to four decimals.
 */
class ReworkTest {
    private static Bench v2() {
        return new Bench(1, "86", "86", "145")
                .deck(1, "0.15", "0.15")
                .put(MeasureKind.CHAMBER_VOLUME, 1, null, "48.2")
                .put(MeasureKind.OPENING_AREA, 1, null, "5200")
                .put(MeasureKind.CROWN_VOLUME, 1, null, "-4.6")
                .put(MeasureKind.TOP_LAND, 1, null, "85.4")
                .put(MeasureKind.TOP_LAND_HEIGHT, 1, null, "6")
                .put(MeasureKind.GASKET_BORE, 1, Spot.TRIAL_CLAMPED, "87.5")
                .put(MeasureKind.GASKET_THICKNESS, null, Spot.RING_CLAMPED, "0.7");
    }

    private static String ratio(Sheet sheet) {
        return Bench.shown(Bench.answer(sheet, MeasureKind.COMPRESSION_RATIO)
                        .checks()
                        .get(0))
                .toPlainString();
    }

    @Test
    void a_skim_of_head_or_deck_makes_the_ratio_of_the_published_case() {
        Rework rework = new Rework(v2().sheet());
        assertThat(ratio(v2().sheet())).isEqualTo("11.1608");
        assertThat(ratio(rework.after(Work.headSkim(250_000)))).isEqualTo("11.4368"); // 11.43675487
        assertThat(ratio(rework.after(Work.deckSkim(150_000)))).isEqualTo("11.3441"); // 11.34411328
    }

    /** Published: 1.101043909 mm. */
    @Test
    void the_way_to_a_ratio_is_the_published_skim() {
        Proposal head = Ways.to(new Goal(Goal.Kind.COMPRESSION_RATIO, 125_000), v2().sheet(), List.of()).stream()
                .filter(way -> way.work().kind() == Work.Kind.HEAD_SKIM)
                .findFirst()
                .orElseThrow();
        assertThat(head.work().depth()).isBetween(1_100_544L, 1_101_544L); // five volumes, each to half of 0.001 cc
        assertThat(head.possible()).isTrue();
    }

    /** Common practice, no source: a skim brings the valve nearer by more than itself, by the cosine of its angle. */
    @Test
    void a_skim_is_not_called_possible_while_nobody_knows_what_the_valves_lose() {
        Bench valves = v2().put(MeasureKind.VALVE_TO_PISTON_INLET, 1, Spot.VALVE_A, "3.2")
                .limit(MeasureKind.VALVE_TO_PISTON_INLET, "2.0", null);
        assertThat(head(valves).against())
                .extracting(Proposal.Obstacle::why, Proposal.Obstacle::kind)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple(Proposal.Why.NOT_KNOWN, MeasureKind.VALVE_ANGLE_INLET));

        assertThat(head(valves.put(MeasureKind.VALVE_ANGLE_INLET, null, null, "0"))
                        .possible())
                .isTrue();

        Proposal steep = head(valves.put(MeasureKind.VALVE_ANGLE_INLET, null, null, "30")); // 3.2 - 1.101/0.866 < 2.0
        assertThat(steep.against()).hasSize(1);
        assertThat(steep.against().get(0).check().verdict()).isEqualTo(FitVerdict.OUTSIDE);
    }

    private static Proposal head(Bench bench) {
        return Ways.to(new Goal(Goal.Kind.COMPRESSION_RATIO, 125_000), bench.sheet(), List.of()).stream()
                .filter(way -> way.work().kind() == Work.Kind.HEAD_SKIM)
                .findFirst()
                .orElseThrow();
    }
}
