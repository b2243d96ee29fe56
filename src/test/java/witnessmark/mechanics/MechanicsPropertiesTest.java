package witnessmark.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of the formulas whatever the figures; and uncertainty against a simulation (JCGM 101). */
class MechanicsPropertiesTest {
    private static final int TRIALS = 200_000;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void first_order_uncertainty_is_what_a_simulation_finds(long seed) {
        Random random = new Random(seed);
        double[] at = {30 + 20 * random.nextDouble(), random.nextDouble() - 0.3, 0.6 + random.nextDouble()};
        double[] standards = {0.05 + 0.2 * random.nextDouble(), 0.02 * random.nextDouble(), 0.02 * random.nextDouble()};
        FirstOrder first = FirstOrder.of(f -> stack(f).ratio(), at, standards);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < TRIALS; i++) {
            double[] drawn = new double[at.length];
            for (int j = 0; j < at.length; j++) {
                drawn[j] = at[j] + standards[j] * random.nextGaussian();
            }
            double off = stack(drawn).ratio() - first.value();
            sum += off;
            squares += off * off;
        }
        double found = Math.sqrt(squares / TRIALS - sum / TRIALS * sum / TRIALS);
        // the deviation found in n draws is itself uncertain by 1/sqrt(2n): six of those
        assertThat(first.standard()).isCloseTo(found, within(found * 6 / Math.sqrt(2.0 * TRIALS)));
        assertThat(Math.sqrt(
                        java.util.Arrays.stream(first.shares()).map(s -> s * s).sum()))
                .isCloseTo(first.standard(), within(1e-12));
    }

    private static ChamberStack stack(double[] f) {
        return new ChamberStack(86, 77, f[0], 87, f[2], f[1], 1.8, 0.4);
    }

    @Test
    void a_half_width_is_spread_evenly() {
        // variance of a uniform distribution: width squared over twelve
        assertThat(FirstOrder.withinHalfWidth(0.5)).isCloseTo(1 / Math.sqrt(12), within(1e-15));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void what_is_solved_for_comes_back(long seed) {
        Random random = new Random(seed);
        ChamberStack stack = stack(new double[] {35 + 10 * random.nextDouble(), 0.3 * random.nextDouble(), 1});
        double wanted = stack.ratio() + random.nextDouble();
        double area = 4000 + 1000 * random.nextDouble();
        assertThat(stack.afterHeadSkim(stack.headSkimFor(wanted, area), area).ratio())
                .isCloseTo(wanted, within(1e-9));
        assertThat(stack.afterDeckSkim(stack.deckSkimFor(wanted)).ratio()).isCloseTo(wanted, within(1e-9));
        assertThat(stack.afterCrownCut(0.3).afterDeckSkim(0.3).ratio()).isCloseTo(stack.ratio(), within(1e-12));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void a_face_is_as_flat_however_it_lies_and_never_flatter_than_its_minimum_zone(long seed) {
        Random random = new Random(seed);
        List<SurfacePoint> face = new ArrayList<>();
        List<SurfacePoint> tilted = new ArrayList<>();
        double b = random.nextGaussian() / 100;
        double c = random.nextGaussian() / 100;
        for (int i = 0; i < 14; i++) {
            SurfacePoint p = new SurfacePoint(random.nextInt(400), random.nextInt(180), random.nextGaussian() * 0.02);
            face.add(p);
            tilted.add(new SurfacePoint(p.x(), p.y(), p.z() + 3 + b * p.x() + c * p.y()));
        }
        double zone = Flatness.minimumZone(face);
        double least = Flatness.leastSquares(face).peakToValley();
        assertThat(Flatness.minimumZone(tilted)).isCloseTo(zone, within(1e-9));
        assertThat(Flatness.leastSquares(tilted).peakToValley()).isCloseTo(least, within(1e-9));
        assertThat(zone).isLessThanOrEqualTo(least + 1e-12);
        // no plane tried at random does better
        for (int i = 0; i < 20_000; i++) {
            double tx = (random.nextDouble() - 0.5) * 4e-3;
            double ty = (random.nextDouble() - 0.5) * 4e-3;
            double high = face.stream()
                    .mapToDouble(p -> p.z() - tx * p.x() - ty * p.y())
                    .max()
                    .orElseThrow();
            double low = face.stream()
                    .mapToDouble(p -> p.z() - tx * p.x() - ty * p.y())
                    .min()
                    .orElseThrow();
            assertThat(high - low).isGreaterThanOrEqualTo(zone - 1e-12);
        }
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThatThrownBy(() -> ChamberStack.ratio(450, 0)).hasMessageContaining("no volume");
        assertThatThrownBy(() -> ChamberStack.clearanceFor(450, 1)).hasMessageContaining("above 1");
        assertThatThrownBy(() -> new ChamberStack(0, 80, 40, 87, 1, 0, 0, 0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new BoltedJoint(0, 1)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> Preload.fromTorque(60, 0, 10)).hasMessageContaining("above 0");
        List<SurfacePoint> line = List.of(
                new SurfacePoint(0, 0, 1),
                new SurfacePoint(1, 1, 2),
                new SurfacePoint(2, 2, 1),
                new SurfacePoint(3, 3, 1));
        assertThatThrownBy(() -> Flatness.leastSquares(line)).hasMessageContaining("line");
        assertThatThrownBy(() -> Flatness.minimumZone(line)).hasMessageContaining("line");
        assertThatThrownBy(() -> Flatness.minimumZone(line.subList(0, 3))).hasMessageContaining("four points");
    }

    @Test
    void bolt_stretch_and_joint_squeeze_together_are_the_advance_of_the_nut() {
        BoltedJoint joint = new BoltedJoint(180_000, 720_000);
        double pull = joint.fromAngle(1.25, 90);
        assertThat(pull / joint.bolt() + pull / joint.members()).isCloseTo(1.25 * 90 / 360, within(1e-12));
        assertThat(joint.clampForce(pull, joint.separationLoad(pull))).isCloseTo(0, within(1e-6));
        assertThat(Preload.fromTorque(Preload.torqueFor(pull, 0.15, 11), 0.15, 11))
                .isCloseTo(pull, within(1e-6));
        assertThat(Preload.fromStretch(Preload.stretchOf(pull, 205_000, 50, 45), 205_000, 50, 45))
                .isCloseTo(pull, within(1e-6));
    }
}
