package witnessmark.trace.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.trace.Layout;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Outline;

/** The outline of a trace against least and most taken piece by piece over all of its samples. */
class OutlinerTest {
    private static final List<ColumnForm> COLUMNS = List.of(
            ColumnForm.other("time"),
            new ColumnForm("rpm", ChannelKind.ENGINE_SPEED, ChannelUnit.RPM, ColumnForm.From.FILE),
            ColumnForm.other("never"));

    private record Sample(long micros, double rpm) {}

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 1_024, 1_025, 40_000, 60_000})
    void no_extreme_is_lost_however_long_it_is(int rows) {
        SplittableRandom random = new SplittableRandom(rows);
        List<Sample> samples = new ArrayList<>();
        Outliner outliner = new Outliner();
        outliner.begin(new Layout(COLUMNS, List.of(0L, 50_000L, 0L)));
        long micros = 0;
        for (int i = 0; i < rows; i++) {
            double rpm = random.nextInt(20) == 0 ? Double.NaN : random.nextDouble(0, 9_000);
            samples.add(new Sample(micros, rpm));
            outliner.sample(micros, new double[] {micros, rpm, Double.NaN});
            micros += random.nextLong(1, 100_000);
        }
        outliner.end();
        Outline outline = outliner.outline();

        assertThat(outline.parts()).hasSize(1);
        Outline.Speed speed = outline.parts().get(0);
        assertThat(speed.most()).hasSizeLessThanOrEqualTo(Outliner.PIECES).isNotEmpty();
        double[] least = new double[speed.least().size()];
        double[] most = new double[speed.most().size()];
        java.util.Arrays.fill(least, Double.NaN);
        java.util.Arrays.fill(most, Double.NaN);
        samples.stream().filter(sample -> !Double.isNaN(sample.rpm())).forEach(sample -> {
            int piece = (int) (sample.micros() / speed.step());
            least[piece] = Double.isNaN(least[piece]) ? sample.rpm() : Math.min(least[piece], sample.rpm());
            most[piece] = Double.isNaN(most[piece]) ? sample.rpm() : Math.max(most[piece], sample.rpm());
        });
        assertThat(speed.least()).containsExactly(boxed(least));
        assertThat(speed.most()).containsExactly(boxed(most));
        assertThat(outline.columns().get(2).isKnown()).isFalse();
        assertThat(outline.columns().get(1).most())
                .isEqualTo(samples.stream()
                        .mapToDouble(Sample::rpm)
                        .filter(rpm -> !Double.isNaN(rpm))
                        .max()
                        .orElse(Double.NaN));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void each_part_has_an_outline_of_its_own(int parts) {
        Outliner outliner = new Outliner();
        outliner.begin(new Layout(COLUMNS, List.of(0L, 50_000L, 0L)));
        for (int part = 0; part < parts; part++) {
            if (part > 0) {
                outliner.part();
            }
            outliner.sample(0, new double[] {0, 1000 * (part + 1), Double.NaN});
        }
        outliner.end();

        assertThat(outliner.outline().parts())
                .extracting(speed -> speed.most().get(0))
                .hasSize(parts)
                .isSorted();
    }

    private static Double[] boxed(double[] figures) {
        return java.util.stream.DoubleStream.of(figures).boxed().toArray(Double[]::new);
    }
}
