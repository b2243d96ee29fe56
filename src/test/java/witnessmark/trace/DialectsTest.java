package witnessmark.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Extremes;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.SpeedFound;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** The same run in every dialect comes to the same, which is the sum over the whole of it. */
class DialectsTest {
    private static final int TRACES = 30;
    private static final double LIMIT = 7200;
    private static final TraceSettings SETTINGS =
            TraceSettings.usual().with(TraceSetting.OVER_REV_ABOVE, LIMIT).with(TraceSetting.HIGH_SPEED_FROM, 6000);

    @ParameterizedTest
    @EnumSource
    void every_dialect_comes_to_the_same_totals(Dialect dialect) {
        for (long seed = 1; seed <= TRACES; seed++) {
            Story story = Story.of(seed, 8 + (int) seed);
            Reads.Read read = Reads.of(dialect.bytes(story, seed), SETTINGS);
            String which = dialect + ", seed " + seed;
            assertThat(read.recognised().open()).as(which).isEmpty();
            assertThat(read.read().late()).as(which).isEmpty();
            holds(which, story, read.only(), dialect == Dialect.SEVERAL_RATES);
            formReadsBack(which, read.recognised().form());
            if (dialect == Dialect.OUT_OF_ORDER_AND_TWICE) {
                assertThat(read.defects().samples().keySet())
                        .as(which)
                        .containsAnyOf(DefectKind.TIME_BACKWARDS, DefectKind.DUPLICATE);
            }
        }
    }

    private static void holds(String which, Story story, Reduction found, boolean slow) {
        WholeSums sums = new WholeSums(story);
        SpeedFound speed = found.speed();
        assertThat(speed).as(which).isNotNull();
        assertThat(found.lasted()).as(which).isEqualTo(story.micros(story.samples - 1));
        assertThat(speed.running()).as(which).isEqualTo(Math.round(sums.secondsFrom(500) * 1000));
        assertThat(speed.loaded()).as(which).isEqualTo(Math.round(sums.secondsFrom(3000) * 1000));
        assertThat(speed.high()).as(which).isEqualTo(Math.round(sums.secondsFrom(6000) * 1000));
        assertThat(speed.speeds().total()).as(which).isEqualTo(speed.running());
        assertThat(speed.revolutions()).as(which).isCloseTo(sums.revolutions(), rel(sums.revolutions()));
        assertThat(found.metres()).as(which).isCloseTo(sums.metres(), rel(sums.metres()));
        assertThat(speed.extremes().highest()).as(which).isEqualTo(sums.highestHeld(ChannelKind.ENGINE_SPEED));
        Extremes oil = found.extremes().get(ChannelKind.OIL_PRESSURE);
        assertThat(oil.highest()).as(which).isCloseTo(sums.highestHeld(ChannelKind.OIL_PRESSURE), within(1e-9));
        if (!slow) {
            assertThat(found.extremes().get(ChannelKind.WATER_TEMPERATURE).highest())
                    .as(which)
                    .isCloseTo(sums.highestHeld(ChannelKind.WATER_TEMPERATURE), within(1e-9));
        }
        assertThat(found.laps()).as(which).isEqualTo(sums.laps());
        assertThat(found.coverage()).as(which).isEqualTo(1.0);
    }

    private static org.assertj.core.data.Offset<Double> rel(double value) {
        return within(1e-9 * Math.abs(value));
    }

    private static void formReadsBack(String which, TraceForm form) {
        assertThat(TraceForm.parse(form.text())).as(which).isEqualTo(form);
    }
}
