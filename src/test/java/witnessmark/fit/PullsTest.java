package witnessmark.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Random;
import java.util.UUID;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Fastener;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.JointMethod;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.PartKind;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Pull;
import witnessmark.fit.result.Pull.Finding;
import witnessmark.fit.result.Pull.Lack;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;

/** What tightened fasteners pull with. */
class PullsTest {
    private static Joint joint(PartKind kind, JointMethod method, String value, String lubricant) {
        return new Joint(
                new Id<>(new UUID(1, 1)),
                null,
                kind,
                "all",
                "",
                method,
                value,
                lubricant,
                null,
                Moment.of(Instant.EPOCH, ZoneId.of("UTC")),
                true,
                "Mo",
                "Jo");
    }

    /** Figures of a fastener that a test sets one after another. */
    private static final class Figures {
        private @Nullable Integer count;
        private String diameter = "10";
        private @Nullable String nutFactor;
        private String lubricant = "";
        private @Nullable String shank;
        private @Nullable String length;
        private @Nullable Integer modulus;
        private @Nullable Integer proof;
        private @Nullable Integer makersPull;
        private @Nullable String bar;

        private Fastener made() {
            return new Fastener(
                    new Id<>(new UUID(2, 2)),
                    count,
                    mm(diameter),
                    nutFactor == null ? null : new BigDecimal(nutFactor),
                    lubricant,
                    shank == null ? null : mm(shank),
                    length == null ? null : mm(length),
                    modulus,
                    proof,
                    makersPull,
                    bar == null ? null : Pressure.ofBar(new BigDecimal(bar)),
                    "maker's sheet");
        }

        private static Length mm(String figure) {
            return Length.ofMillimetres(new BigDecimal(figure));
        }
    }

    private static Pull torqued(String value, String lubricant, Figures figures) {
        return new Pulls(new Bench(4, "85.2", "77.6", "141.5").sheet())
                .of(joint(PartKind.HEAD_STUDS, JointMethod.TORQUE, value, lubricant), figures.made());
    }

    /** Source: definition T = K·d·F with K 0.18, d 10 mm, F 51 000 N (the torque-angle case of the outside checks). */
    @Test
    void torque_over_nut_factor_and_diameter_is_the_pull() {
        Figures figures = new Figures();
        figures.nutFactor = "0.18";
        figures.lubricant = "oil";

        Pull pull = torqued("91.8 N·m", "Oil", figures);

        assertThat(pull.way()).isEqualTo(Pull.Way.TORQUE);
        assertThat(pull.each().likely()).isEqualTo(51_000);
    }

    /**
     * A steel bolt of 5/8 in, 5 in long between the heads, pulled to 14.4 kip: it stretches by F·l/(E·A). Source: Shigley,
     * Mechanical Engineering Design, example 8-4 for the pull and the area 0.226 in² (from memory), E 30 Mpsi; the
     * stretch is that definition.
     */
    @Test
    void stretch_of_a_shank_gives_back_the_pull_that_made_it() {
        double newtons = 14_407.5 * 4.4482216152605;
        double area = 0.226 * 25.4 * 25.4;
        double modulus = 206_843; // 30 Mpsi
        double stretch = newtons * 127 / (modulus * area);
        Figures figures = new Figures();
        figures.shank = BigDecimal.valueOf(Math.sqrt(area * 4 / Math.PI)).toPlainString();
        figures.length = "127";
        figures.modulus = 207;

        Pull pull = new Pulls(new Bench(1, "85", "77", "141").sheet())
                .of(
                        joint(
                                PartKind.ROD_BOLTS,
                                JointMethod.STRETCH,
                                BigDecimal.valueOf(stretch).toPlainString() + " mm",
                                ""),
                        figures.made());

        assertThat((double) pull.each().likely() * 206_843 / 207_000).isCloseTo(newtons, within(newtons * 1e-4));
    }

    /** Common practice, no source: by torque a pull is known to about a third, by angle to a sixth, by stretch to a twentieth. */
    @Test
    void the_way_of_tightening_says_how_well_the_pull_is_known() {
        Figures figures = new Figures();
        figures.makersPull = 40_000;
        figures.shank = "7.6";
        figures.length = "38";

        Pull torque = torqued("60 N·m", "", figures);
        Pull angle = new Pulls(new Bench(4, "85", "77", "141").sheet())
                .of(joint(PartKind.HEAD_STUDS, JointMethod.TORQUE_AND_ANGLE, "40 N·m + 90°", ""), figures.made());
        Pull stretch = new Pulls(new Bench(4, "85", "77", "141").sheet())
                .of(joint(PartKind.ROD_BOLTS, JointMethod.STRETCH, "0.14 mm", ""), figures.made());

        assertThat(torque.each()).isEqualTo(new Pull.Range(28_000, 40_000, 52_000));
        assertThat(angle.each()).isEqualTo(new Pull.Range(34_000, 40_000, 46_000));
        assertThat(width(stretch)).isCloseTo(0.05, within(1e-4));
    }

    private static double width(Pull pull) {
        return (double) (pull.each().most() - pull.each().likely())
                / pull.each().likely();
    }

    /** Worked by hand: 10 studs of 54 kN over 4 cylinders are 135 kN; 95 bar on 86.6 mm are 55.96 kN. */
    @Test
    void head_studs_hold_against_the_gas_within_the_clamped_ring() {
        Figures figures = studs();
        Pull pull = new Pulls(new Bench(4, "85.2", "77.6", "141.5")
                        .put(MeasureKind.GASKET_BORE, 2, Spot.TRIAL_CLAMPED, "86.6")
                        .put(MeasureKind.GASKET_BORE, 3, Spot.TRIAL_CLAMPED, "86.5")
                        .sheet())
                .of(joint(PartKind.HEAD_STUDS, JointMethod.TORQUE, "95 N·m", "moly"), figures.made());

        assertThat(pull.each().likely()).isEqualTo(53_977);
        assertThat(pull.hold().clamp().likely()).isEqualTo(134_943);
        assertThat(pull.hold().gas()).isBetween(55_950L, 55_965L);
        assertThat(pull.hold().assumed()).isFalse();
        assertThat(pull.finding()).isEqualTo(Finding.NOTHING_AGAINST);
    }

    private static Figures studs() {
        Figures figures = new Figures();
        figures.count = 10;
        figures.diameter = "11";
        figures.nutFactor = "0.16";
        figures.lubricant = "moly";
        figures.proof = 73_500;
        figures.bar = "95";
        return figures;
    }

    @Test
    void studs_pulled_too_little_may_let_the_head_lift_and_too_much_may_stay_longer() {
        assertThat(torqued("95 N·m", "moly", studs()).finding()).isEqualTo(Finding.NOTHING_AGAINST);
        assertThat(torqued("50 N·m", "moly", studs()).finding()).isEqualTo(Finding.MAY_OPEN);
        assertThat(torqued("35 N·m", "moly", studs()).finding()).isEqualTo(Finding.OPENS);
        assertThat(torqued("110 N·m", "moly", studs()).finding()).isEqualTo(Finding.MAY_PASS_PROOF);
        assertThat(torqued("150 N·m", "moly", studs()).finding()).isEqualTo(Finding.PAST_PROOF);
    }

    @Test
    void what_is_not_written_down_is_said_and_nothing_is_guessed() {
        Figures noFactor = studs();
        noFactor.nutFactor = null;
        noFactor.lubricant = "";
        Figures noCount = studs();
        noCount.count = null;

        assertThat(torqued("95 N·m", "moly", noFactor).lacks()).containsExactly(Lack.NUT_FACTOR);
        assertThat(torqued("95 N·m", "engine oil", studs()).lacks()).containsExactly(Lack.LUBRICANT);
        assertThat(torqued("95 N·m", "", studs()).lacks()).containsExactly(Lack.LUBRICANT);
        assertThat(torqued("tight", "moly", studs()).lacks()).containsExactly(Lack.VALUE);
        assertThat(torqued("0", "moly", studs()).lacks()).containsExactly(Lack.VALUE);
        assertThat(torqued("tight", "moly", studs()).each()).isNull();
        assertThat(torqued("95 N·m", "moly", noCount).lacks()).containsExactly(Lack.COUNT);
        assertThat(torqued("95 N·m", "moly", noCount).each()).isNotNull();
        Pulls pulls = new Pulls(new Bench(4, "85", "77", "141").sheet());
        assertThat(pulls.of(joint(PartKind.HEAD_STUDS, JointMethod.ANGLE, "90°", "moly"), studs().made())
                        .lacks())
                .containsExactly(Lack.MAKERS_PULL);
        assertThat(pulls.of(joint(PartKind.ROD_BOLTS, JointMethod.STRETCH, "0.14 mm", ""), studs().made())
                        .lacks())
                .containsExactly(Lack.SHANK);
        assertThat(pulls.of(joint(PartKind.ROD_BOLTS, JointMethod.STRETCH, "0.14 mm", ""), null))
                .returns(Finding.NOT_KNOWN, Pull::finding)
                .returns(null, Pull::proof);
    }

    private static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    /** Half the torque, half the pull; twice the studs, twice the hold; a wider ring, more gas. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void pull_and_hold_go_as_torque_count_and_bore_do(long seed) {
        Random random = new Random(seed);
        Figures figures = studs();
        figures.count = 4 + random.nextInt(20);
        figures.nutFactor = BigDecimal.valueOf(120 + random.nextInt(150), 3).toPlainString();
        figures.diameter = BigDecimal.valueOf(70 + random.nextInt(80), 1).toPlainString();
        int torque = 20 + random.nextInt(180);
        Pull once = torqued(torque + " N·m", "moly", figures);
        Pull twice = torqued(2 * torque + " N·m", "moly", figures);
        figures.count *= 2;
        Pull more = torqued(torque + " N·m", "moly", figures);

        assertThat(twice.each().likely())
                .isBetween(2 * once.each().likely() - 1, 2 * once.each().likely() + 1);
        assertThat(more.hold().clamp().least())
                .isBetween(
                        2 * once.hold().clamp().least() - 1,
                        2 * once.hold().clamp().least() + 1);
        assertThat(once.hold().gas()).isEqualTo(more.hold().gas());
        assertThat(once.each().least()).isLessThan(once.each().likely());
    }
}
