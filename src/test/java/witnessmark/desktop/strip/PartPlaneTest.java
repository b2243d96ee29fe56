package witnessmark.desktop.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.domain.PartSpot;
import witnessmark.study.result.Outline;

/** Where places of a part lie on its drawing: there and back again, and which side is where. */
class PartPlaneTest {
    private static final Rectangle2D ROOM = new Rectangle2D.Double(7, 11, 2300, 1500);

    @ParameterizedTest
    @EnumSource(value = Outline.class, mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void every_place_is_found_again_where_it_is_drawn(Outline outline) {
        PartPlane plane = new PartPlane(outline, ROOM);
        for (int around = 0; around < outline.degrees(); around++) {
            for (int out = outline.disc() ? 1 : 0; out <= 100; out++) {
                PartSpot place = new PartSpot(around, out);
                Point2D at = plane.point(place);
                assertThat(plane.place(at.getX(), at.getY())).isEqualTo(place);
                assertThat(plane.has(at.getX(), at.getY(), 0.001)).isTrue();
            }
        }
    }

    @ParameterizedTest
    @EnumSource(value = Outline.class, mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void wherever_somebody_clicks_the_place_can_be_written_down(Outline outline) {
        Random random = new Random(20260417); // seed 20260417
        PartPlane plane = new PartPlane(outline, ROOM);
        Stream.generate(() -> new Point2D.Double(random.nextDouble() * 4000 - 800, random.nextDouble() * 3000 - 700))
                .limit(5000)
                .map(at -> plane.place(at.x, at.y))
                .forEach(place -> {
                    assertThat(place.around()).isBetween(0, 359);
                    assertThat(place.around()).isLessThanOrEqualTo(outline.degrees());
                    assertThat(place.out()).isBetween(0, 100);
                });
    }

    @Test
    void on_a_disc_front_is_to_the_left_and_the_exhaust_side_below() {
        PartPlane plane = new PartPlane(Outline.DISC, ROOM);
        lies(plane, 0, -1, 0);
        lies(plane, 90, 0, 1);
        lies(plane, 180, 1, 0);
        lies(plane, 270, 0, -1);
    }

    @Test
    void from_the_front_end_the_top_is_above_and_the_exhaust_side_to_the_right() {
        PartPlane plane = new PartPlane(Outline.WHEEL, ROOM);
        lies(plane, 0, 0, -1);
        lies(plane, 90, 1, 0);
        lies(plane, 180, 0, 1);
        lies(plane, 270, -1, 0);
    }

    private static void lies(PartPlane plane, int around, int right, int down) {
        Point2D at = plane.point(new PartSpot(around, 100));
        double radius = plane.box().getWidth() / 2;
        assertThat(at.getX()).isCloseTo(ROOM.getCenterX() + right * radius, within(1e-6));
        assertThat(at.getY()).isCloseTo(ROOM.getCenterY() + down * radius, within(1e-6));
    }

    @Test
    void laid_flat_it_goes_round_from_left_to_right_and_out_from_above() {
        PartPlane half = new PartPlane(Outline.HALF, ROOM);
        assertThat(half.point(new PartSpot(180, 0))).isEqualTo(new Point2D.Double(ROOM.getMaxX(), ROOM.getY()));
        PartPlane round = new PartPlane(Outline.ROUND, ROOM);
        assertThat(round.point(new PartSpot(180, 100)))
                .isEqualTo(new Point2D.Double(ROOM.getCenterX(), ROOM.getMaxY()));
    }

    @Test
    void a_click_well_beside_a_disc_is_none() {
        PartPlane plane = new PartPlane(Outline.DISC, ROOM);
        assertThat(plane.has(ROOM.getX() + 1, ROOM.getCenterY(), 8)).isFalse();
        assertThat(plane.has(ROOM.getCenterX(), ROOM.getY() - 5, 8)).isTrue();
        assertThat(plane.has(ROOM.getCenterX(), ROOM.getY() - 9, 8)).isFalse();
    }
}
