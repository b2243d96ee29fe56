package witnessmark.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.LimitRank;
import witnessmark.domain.MeasureKind;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Bounds;

/**
 * Which figures are asked about beside their neighbours. That a median and the median of the distances from it are not
 * moved by one wild figure is Hampel's (The influence curve and its role in robust estimation, 1974), from memory; how
 * far apart is worth a question is common practice, no source.
 */
class UnlikeTest {
    private static final long SEED = 20_260_708;
    private static final List<MeasureKind> KINDS = List.of(
            MeasureKind.BORE,
            MeasureKind.MAIN_CLEARANCE,
            MeasureKind.DECK_CLEARANCE,
            MeasureKind.CHAMBER_VOLUME,
            MeasureKind.RING_GAP_TOP,
            MeasureKind.PISTON_MASS,
            MeasureKind.SEAT_FORCE_INLET);

    private final Random random = new Random(SEED);

    private static boolean asked(MeasureKind kind, List<Long> neighbours, long figure) {
        return Unlike.is(kind, Bounds.NONE, neighbours, figure);
    }

    /** In the unit shown: hundredths among hundredths, a kilonewton's digit among newtons, and what a crew chief shrugs at. */
    @ParameterizedTest
    @CsvSource({
        "HEAD_FLATNESS, 0.04 0.04 0.03 0.04, 0.20, true",
        "HEAD_FLATNESS, 0.04 0.04 0.03 0.04, 0.07, false",
        "MAIN_CLEARANCE, 0.04 0.04 0.04 0.04, 0.20, true",
        "MAIN_CLEARANCE, 0.055 0.058 0.056, 0.060, false",
        "SEAT_FORCE_INLET, 291 290 288 291, 0.25, true",
        "SEAT_FORCE_INLET, 291 290 288 291, 281, false",
        "SEAT_FORCE_INLET, 291, 0.25, true",
        "DECK_CLEARANCE, 0.20 0.15, 0.21, false",
        "DECK_CLEARANCE, 0.20 0.20, 0.15, false",
        "DECK_CLEARANCE, 0.20 0.15 0.21 0.16, 2.0, true",
        "DECK_CLEARANCE, 0.20, -0.05, false",
        "DECK_CLEARANCE, 0.20, 2.0, true",
        "BORE, 85.003 85.004 85.002, 85.035, false",
        "BORE, 85.003 85.004 85.002, 85.30, true",
        "BORE, 85.003 85.004 85.002, 58.003, true",
        "PISTON_MASS, 412.1 412.4 412.3, 421.3, true",
        "PISTON_MASS, 412.1 412.4 412.3, 413.5, false",
    })
    void what_nobody_meant_is_asked_about_and_what_differs_as_engines_do_is_not(
            MeasureKind kind, String neighbours, String figure, boolean asked) {
        List<Long> known = new ArrayList<>();
        for (String one : neighbours.split(" ")) {
            known.add(kind.dimension().parts(new java.math.BigDecimal(one)));
        }
        assertThat(asked(kind, known, kind.dimension().parts(new java.math.BigDecimal(figure))))
                .isEqualTo(asked);
    }

    @Test
    void a_slip_of_the_decimal_point_is_asked_about_beside_any_number_of_neighbours() {
        for (int i = 0; i < 2_000; i++) {
            MeasureKind kind = KINDS.get(random.nextInt(KINDS.size()));
            long middle = middle(kind);
            List<Long> known = alike(kind, middle, 1 + random.nextInt(12));
            String seen = SEED + ", " + kind + " " + known;
            assertThat(asked(kind, known, middle * 10)).as(seen).isTrue();
            assertThat(kind.sided() || asked(kind, known, middle / 10)).as(seen).isTrue();
            assertThat(asked(kind, known, middle)).as(seen).isFalse();
        }
    }

    /** Further away on the same side is never less doubtful, and the order they were measured in says nothing. */
    @Test
    void further_away_is_never_less_doubtful() {
        for (int i = 0; i < 2_000; i++) {
            MeasureKind kind = KINDS.get(random.nextInt(KINDS.size()));
            long middle = middle(kind);
            List<Long> known = alike(kind, middle, 2 + random.nextInt(12));
            long away = (long) (middle * random.nextDouble());
            boolean near = asked(kind, known, middle + away);
            Collections.shuffle(known, random);
            assertThat(asked(kind, known, middle + away)).isEqualTo(near);
            if (near) {
                assertThat(asked(kind, known, middle + 2 * away + 1))
                        .as(SEED + ", " + known)
                        .isTrue();
            }
        }
    }

    /** One slip among four and more neighbours neither hides another nor makes a good one look wrong. */
    @Test
    void one_wild_neighbour_changes_no_answer_of_note() {
        for (int i = 0; i < 2_000; i++) {
            MeasureKind kind = KINDS.get(random.nextInt(KINDS.size()));
            long middle = middle(kind);
            List<Long> known = alike(kind, middle, 4 + random.nextInt(9));
            known.add(random.nextBoolean() ? middle * 10 : middle / 10);
            String seen = SEED + ", " + kind + " " + known;
            assertThat(asked(kind, known, middle)).as(seen).isFalse();
            assertThat(asked(kind, known, middle * 10)).as(seen).isTrue();
        }
    }

    /** 0.050 to 0.062 mm: what lies between two limits is meant, whatever the others are. */
    @Test
    void what_is_between_two_limits_is_never_asked_about() {
        Bound least = new Bound(50_000, LimitRank.OWN, "");
        Bound most = new Bound(62_000, LimitRank.OWN, "");
        Bounds both = new Bounds(least, most, null, null);
        Bounds one = new Bounds(null, most, null, null);
        for (long figure = 50_000; figure <= 62_000; figure += 500) {
            assertThat(Unlike.is(MeasureKind.MAIN_CLEARANCE, both, List.of(900_000L, 900_000L), figure))
                    .isFalse();
        }
        assertThat(Unlike.is(MeasureKind.HEAD_FLATNESS, one, List.of(50_000L, 50_000L, 60_000L), 0))
                .as("a flatter face is as likely")
                .isFalse();
    }

    private long middle(MeasureKind kind) {
        return switch (kind) {
            case BORE -> 60_000_000L + random.nextInt(40_000_000);
            case MAIN_CLEARANCE -> 40_000L + random.nextInt(40_000);
            case DECK_CLEARANCE -> 150_000L + random.nextInt(300_000);
            case RING_GAP_TOP -> 300_000L + random.nextInt(300_000);
            case CHAMBER_VOLUME -> 30_000L + random.nextInt(30_000);
            case PISTON_MASS -> 300_000L + random.nextInt(200_000);
            default -> 200_000L + random.nextInt(200_000);
        };
    }

    /** Neighbours as they are measured in good hands: within the half-width, or a thousandth where none is usual. */
    private List<Long> alike(MeasureKind kind, long middle, int count) {
        Long usual = Usual.halfWidth(kind);
        long width = usual == null ? middle / 1_000 : usual;
        List<Long> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(middle + Math.round((2 * random.nextDouble() - 1) * width));
        }
        return all;
    }
}
