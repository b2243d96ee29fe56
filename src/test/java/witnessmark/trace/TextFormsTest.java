package witnessmark.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.SpeedHistogram;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** What is kept of a trace as text reads back. */
class TextFormsTest {
    @Test
    void time_by_speed_reads_back_and_adds_up() {
        SpeedHistogram one = SpeedHistogram.of(0, 0, 1500, 0, 20);
        assertThat(one.text()).isEqualTo("500:1500;1000:20");
        assertThat(SpeedHistogram.parse(one.text())).isEqualTo(one);
        assertThat(SpeedHistogram.parse("")).isEqualTo(SpeedHistogram.nothing());
        assertThat(one.total()).isEqualTo(1520);
        assertThat(one.from(501)).isEqualTo(20);
        assertThat(one.from(500)).isEqualTo(1520);
        SpeedHistogram both = one.plus(SpeedHistogram.of(5));
        assertThat(both.text()).isEqualTo("0:5;500:1500;1000:20");
        assertThat(both.millis(2)).isEqualTo(1500);
    }

    @ParameterizedTest
    @ValueSource(strings = {"500", "510:3", "500:3;250:2", "500:-1", "500:0", "40000:1", "x:1", "500:1;"})
    void what_is_no_time_by_speed_is_refused(String text) {
        assertThatThrownBy(() -> SpeedHistogram.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void settings_read_back_and_keep_their_ranges() {
        TraceSettings settings =
                TraceSettings.usual().with(TraceSetting.OVER_REV_ABOVE, 8400).with(TraceSetting.OIL_DIP_SHORTEST, 0.25);
        assertThat(settings.text()).isEqualTo("over-rev above=8400;oil dip shortest=0.25");
        assertThat(TraceSettings.parse(settings.text())).isEqualTo(settings);
        assertThat(TraceSettings.parse("")).isEqualTo(TraceSettings.usual());
        assertThat(TraceSettings.usual().has(TraceSetting.OVER_REV_ABOVE)).isFalse();
        assertThatThrownBy(() -> settings.with(TraceSetting.RUNNING_FROM, -1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_form_with_odd_headings_reads_back() {
        String text = "Time;%/|,\u00b0 a;Engine Speed\n0,0;1;6000\n0,1;2;6100\n0,2;3;6200\n";
        TraceForm form = Reads.recognise(text.getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .orThrow()
                .form();
        assertThat(TraceForm.parse(form.text())).isEqualTo(form);
        assertThat(form.named("%/|,\u00b0 a")).isEqualTo(1);
        assertThatThrownBy(() -> TraceForm.parse("2;UTF-8")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_sweep_at_full_throttle_is_a_pull_with_its_torque_and_power() {
        double[] rpm = new double[400];
        double[] throttle = new double[400];
        double[] torque = new double[400];
        for (int i = 0; i < 400; i++) {
            boolean sweep = i >= 100 && i <= 300;
            rpm[i] = sweep ? 3000 + (i - 100) * 25 : 3000;
            throttle[i] = sweep ? 100 : 20;
            torque[i] = sweep ? 200 - Math.abs(i - 220) * 0.1 : 10;
        }
        Reduction found = ReductionsTest.reduced(
                20, List.of(ChannelKind.ENGINE_SPEED, ChannelKind.THROTTLE, ChannelKind.TORQUE), rpm, throttle, torque);
        assertThat(found.pulls()).singleElement().satisfies(pull -> {
            assertThat(pull.at()).isEqualTo(5_000_000);
            assertThat(pull.lasted()).isEqualTo(10_000_000);
            assertThat(pull.from()).isEqualTo(3000);
            assertThat(pull.to()).isEqualTo(8000);
            assertThat(pull.torque()).isBetween(199.8, 200.0);
            assertThat(pull.torqueAt()).isBetween(5950.0, 6050.0);
            assertThat(pull.power()).isNull();
        });
    }
}
