package witnessmark.fit.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.FaceHole;
import witnessmark.domain.FaceOutline;
import witnessmark.domain.FrontSide;
import witnessmark.domain.HoleKind;
import witnessmark.domain.Id;
import witnessmark.domain.SkimPass;
import witnessmark.domain.SkimShadow;
import witnessmark.fit.result.face.CleanUp;
import witnessmark.fit.result.face.Comeback;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.FacePlace;
import witnessmark.fit.result.face.FacePlace.Kind;
import witnessmark.fit.result.face.FacePlace.Side;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.fit.result.face.ZoneFinding.State;
import witnessmark.quantity.Length;

/**
 * Facts of the trade about faces. Where no other source is named: common practice, no source. The frame, a four with its
 * bores 94 mm apart on a face of 412 by 176 mm, is invented.
 */
class FacesTest {
    private static final Id<FaceOutline> OUTLINE = new Id<>(new UUID(1, 1));
    private static final Length DIAL = mm("0.01");
    private static final Face FACE = new Face(
            new FaceOutline(new Id<>(new UUID(1, 2)), mm("412"), mm("176"), "front", FrontSide.LEFT, ""),
            List.of(bore(1, "65"), bore(2, "159"), bore(3, "253"), bore(4, "347")));

    private static Length mm(String figure) {
        return Length.ofMillimetres(new BigDecimal(figure));
    }

    private static FaceHole bore(int number, String x) {
        return new FaceHole(OUTLINE, HoleKind.BORE, number, mm(x), mm("88"), mm("85.2"));
    }

    private static LowPoint at(int x, int y, String depth) {
        return FACE.point(mm(Integer.toString(x)), mm(Integer.toString(y)), mm(depth));
    }

    private static Findings.Look look(LowPoint... points) {
        return new Findings.Look(List.of(points), DIAL);
    }

    private static List<SkimPass> passes(String... passes) {
        List<SkimPass> read = new ArrayList<>();
        for (String pass : passes) {
            String[] words = pass.split(" ");
            read.add(new SkimPass(
                    new Id<>(new UUID(2, 1)), read.size() + 1, mm(words[0]), SkimShadow.valueOf(words[1]), ""));
        }
        return read;
    }

    // Clean-up

    /** Two passes of 0.1 mm with the shadow gone only after the second: the low area was between 0.1 and 0.2 mm deep. */
    @Test
    void passes_bound_the_low_area() {
        CleanUp cleanUp = CleanUps.of(passes("0.1 LEFT", "0.1 CLEAN"));
        assertThat(cleanUp).isEqualTo(new CleanUp(mm("0.1"), mm("0.2"), true));
    }

    /** "Cleaned up at 0.08, shadow left between 2 and 3, gone at 0.12": the later sentence holds. */
    @Test
    void a_shadow_that_comes_out_again_under_the_cutter_counts() {
        assertThat(CleanUps.of(passes("0.08 CLEAN", "0.02 LEFT", "0.02 CLEAN")))
                .isEqualTo(new CleanUp(mm("0.1"), mm("0.12"), true));
        assertThat(CleanUps.of(passes("0.05 LEFT", "0.05 LEFT"))).isEqualTo(new CleanUp(mm("0.1"), null, true));
        assertThat(CleanUps.of(passes("0.05 NOT_SAID")).seen()).isFalse();
        assertThat(CleanUps.of(passes("0.05 CLEAN", "0.05 CLEAN"))).isEqualTo(new CleanUp(mm("0"), mm("0.05"), true));
    }

    /** Whatever the passes and the low area: looking after each pass brackets it by one pass, in any order it is told. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void a_low_area_lies_within_the_bounds_its_passes_leave(long seed) {
        Random random = new Random(seed);
        long low = 1L + random.nextInt(200_000);
        List<SkimPass> passes = new ArrayList<>();
        long off = 0;
        for (int i = 1; off < low + 30_000; i++) {
            long depth = 10_000L * (1 + random.nextInt(10));
            off += depth;
            passes.add(new SkimPass(
                    new Id<>(new UUID(2, 1)),
                    i,
                    new Length(depth),
                    off < low ? SkimShadow.LEFT : SkimShadow.CLEAN,
                    ""));
        }
        Collections.shuffle(passes, random);
        CleanUp cleanUp = CleanUps.of(passes);
        assertThat(low).isGreaterThan(cleanUp.over().nanometres());
        assertThat(low)
                .isLessThanOrEqualTo(Objects.requireNonNull(cleanUp.upTo()).nanometres());
        assertThat(CleanUps.total(passes).nanometres()).isEqualTo(off);
    }

    // Where

    @ParameterizedTest
    @CsvSource({
        "206, 148, BETWEEN, 2, EXHAUST",
        "159, 150, CYLINDER, 2, EXHAUST",
        "206, 90, BETWEEN, 2, MIDDLE",
        "347, 150, CYLINDER, 4, EXHAUST",
        "65, 20, CYLINDER, 1, INLET",
        "10, 88, CYLINDER, 1, MIDDLE",
        "405, 170, CYLINDER, 4, EXHAUST",
        "112, 88, BETWEEN, 1, MIDDLE"
    })
    void a_place_is_said_as_the_trade_says_it(int x, int y, Kind kind, int number, Side side) {
        assertThat(at(x, y, "0").place()).isEqualTo(new FacePlace(kind, number, side));
    }

    /** The mirror of the mirror is the place itself, and only exhaust and inlet change. */
    @Test
    void a_mirrored_place_swaps_exhaust_and_inlet() {
        for (int y = 0; y <= 176; y += 8) {
            Length turned = FACE.mirrored(mm(Integer.toString(y)));
            assertThat(FACE.mirrored(turned)).isEqualTo(mm(Integer.toString(y)));
            assertThat(FACE.place(mm("206"), turned).number()).isEqualTo(2);
        }
    }

    // Zones

    /** What falls towards the deepest place is one zone, as long as no healthy cylinder lies between. */
    @Test
    void a_bow_with_its_flanks_is_one_zone_and_a_dip_far_off_another() {
        assertThat(Zones.of(
                        FACE,
                        List.of(
                                at(206, 148, "0.08"),
                                at(159, 150, "0.06"),
                                at(253, 150, "0.05"),
                                at(206, 90, "0.04"),
                                at(347, 150, "0.03"),
                                at(65, 150, "0.02"))))
                .singleElement()
                .satisfies(zone -> assertThat(zone.points()).hasSize(5));
        assertThat(Zones.of(FACE, List.of(at(347, 150, "0.05"), at(206, 148, "0.03"))))
                .extracting(zone -> zone.place().number())
                .containsExactly(4, 2);
    }

    /** A healthy head is within 0.02 mm between rebuilds. */
    @Test
    void what_is_healthy_is_no_zone() {
        assertThat(Zones.of(FACE, List.of(at(206, 148, "0.02"), at(65, 20, "-0.05"))))
                .isEmpty();
    }

    // Coming back

    private static State state(double hours, LowPoint now, LowPoint... before) {
        return Findings.of(
                        FACE,
                        look(now),
                        new Findings.Past(
                                Stream.of(before).map(FacesTest::look).toList(),
                                List.of(),
                                true,
                                null,
                                new Findings.Run(hours, 24L),
                                mm("0.04")))
                .get(0)
                .state();
    }

    @Test
    void the_same_zone_within_15_running_hours_of_a_skim_is_coming_back() {
        LowPoint before = at(206, 148, "0.08");
        assertThat(state(11.68, at(206, 148, "0.03"), before)).isEqualTo(State.COMING_BACK);
        assertThat(state(14.99, at(210, 140, "0.03"), before)).isEqualTo(State.COMING_BACK);
        assertThat(state(15, at(206, 148, "0.03"), before)).isEqualTo(State.AGAIN);
        assertThat(state(2, at(347, 150, "0.05"), before)).isEqualTo(State.NEW);
        assertThat(state(2, at(206, 20, "0.05"), before)).isEqualTo(State.NEW);
        assertThat(state(2, at(206, 148, "0.05"))).isEqualTo(State.FIRST_LOOK);
    }

    /** A name apart is the same zone within half the 94 mm from bore to bore, and another beyond. */
    @Test
    void a_zone_that_wandered_a_little_is_the_same_one() {
        LowPoint before = at(206, 148, "0.08");
        assertThat(state(2, at(246, 148, "0.03"), before)).isEqualTo(State.COMING_BACK);
        assertThat(state(2, at(266, 148, "0.03"), before)).isEqualTo(State.NEW);
    }

    /** What was read at the other end of the face since the skim says nothing of this zone: what the skim left does. */
    @Test
    void a_zone_comes_back_from_what_was_read_there_and_nowhere_else() {
        assertThat(from(at(65, 150, "0.02"))).isEqualTo(mm("0.01"));
        assertThat(from(at(210, 150, "0.02"))).isEqualTo(mm("0.02"));
    }

    private static Length from(LowPoint sinceSkim) {
        Findings.Past past = new Findings.Past(
                List.of(look(at(206, 148, "0.08"))),
                List.of(look(sinceSkim)),
                true,
                mm("0.01"),
                new Findings.Run(6.0, 12L),
                mm("0.04"));
        return Objects.requireNonNull(Findings.of(FACE, look(at(206, 148, "0.03")), past)
                        .get(0)
                        .comeback())
                .from();
    }

    // How flat

    /** Three readings lie in one plane whatever they are, and readings on a line say nothing across it. */
    @Test
    void too_few_readings_or_all_on_a_line_say_nothing_of_flatness() {
        assertThat(Flatnesses.of(List.of(at(65, 20, "0"), at(347, 20, "0.05"), at(206, 150, "0")), DIAL)
                        .leastSquares())
                .isNull();
        assertThat(Flatnesses.of(
                                List.of(at(65, 20, "0"), at(159, 20, "0.05"), at(253, 20, "0"), at(347, 20, "0.02")),
                                DIAL)
                        .minimumZone())
                .isNull();
        assertThat(Flatnesses.of(
                                List.of(at(65, 20, "0"), at(347, 20, "0"), at(65, 150, "0"), at(347, 150, "0.04")),
                                DIAL)
                        .minimumZone())
                .as("two pairs across each other: half of it, between two planes along both diagonals")
                .isEqualTo(mm("0.02"));
    }

    /** 0.03 mm in 12 hours is 0.0025 an hour: 0.01 mm are left, 4 hours at that rate. A dial reads to half its step. */
    @Test
    void how_fast_and_until_when_with_what_the_dial_leaves_open() {
        Comeback comeback = Comebacks.of(mm("0"), mm("0.03"), DIAL, 12.0, 24L, mm("0.04"));
        assertThat(Objects.requireNonNull(comeback.perHour()).likely()).isCloseTo(0.0025, within(1e-12));
        assertThat(Objects.requireNonNull(comeback.perCycle()).likely()).isCloseTo(0.00125, within(1e-12));
        assertThat(Objects.requireNonNull(comeback.hoursLeft()).likely()).isCloseTo(4, within(1e-9));
        assertThat(comeback.hoursLeft().low()).isCloseTo(0.005 / (0.04 / 12), within(1e-9));
        assertThat(comeback.hoursLeft().high()).isCloseTo(0.015 / (0.02 / 12), within(1e-9));
    }

    @Test
    void what_cannot_be_said_is_not_said() {
        assertThat(Comebacks.of(mm("0.01"), mm("0.01"), DIAL, 12.0, 24L, mm("0.04"))
                        .hoursLeft())
                .isNull();
        assertThat(Comebacks.of(mm("0"), mm("0.03"), DIAL, 0.0, 0L, mm("0.04")).perHour())
                .isNull();
        assertThat(Comebacks.of(mm("0"), mm("0.03"), DIAL, null, null, mm("0.04"))
                        .perCycle())
                .isNull();
        assertThat(Comebacks.of(mm("0"), mm("0.03"), DIAL, 12.0, 24L, null).hoursLeft())
                .isNull();
    }

    // The wrong way up

    @Test
    void what_fits_the_last_look_only_turned_over_is_asked_about() {
        var before = Zones.of(FACE, List.of(at(206, 148, "0.08")));
        assertThat(Mirrors.suspected(FACE, before, List.of(at(206, 28, "0.07"))))
                .isPresent();
        assertThat(Mirrors.suspected(FACE, before, List.of(at(206, 148, "0.07"))))
                .isEmpty();
        assertThat(Mirrors.suspected(FACE, before, List.of(at(65, 28, "0.07")))).isEmpty();
        assertThat(Mirrors.suspected(FACE, before, List.of(at(206, 88, "0.07"))))
                .as("in the middle it is the same either way up")
                .isEmpty();
        var middle = Zones.of(FACE, List.of(at(206, 100, "0.08")));
        assertThat(Mirrors.suspected(FACE, middle, List.of(at(206, 100, "0.07"))))
                .as("met as it is, whatever it would be turned over")
                .isEmpty();
    }
}
