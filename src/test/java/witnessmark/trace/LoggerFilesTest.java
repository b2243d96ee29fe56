package witnessmark.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.ChannelKind;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;
import witnessmark.trace.reduce.TimeBaseCheck;
import witnessmark.trace.result.Defect;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Excursion;
import witnessmark.trace.result.OilTrend;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.RunFigures;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** The files of the invented season's logger: what was put wrong in each, and what must come of it. */
class LoggerFilesTest {
    private static final TraceSettings SETTINGS = TraceSettings.usual().with(TraceSetting.OVER_REV_ABOVE, 8600);

    private static Reads.Read read(String text) {
        return Reads.of(text.getBytes(StandardCharsets.UTF_8), SETTINGS);
    }

    @Test
    void oil_pressure_at_nothing_and_back_at_once_is_the_sensor() {
        Reads.Read read = read(LoggerFiles.falseDips());
        assertThat(read.defects().of(DefectKind.SENSOR_DROP))
                .extracting(Defect::from, Defect::until, Defect::samples, Defect::channel)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(310_000_000L, 310_200_000L, 4L, "Oil Press"),
                        org.assertj.core.groups.Tuple.tuple(1_020_000_000L, 1_020_200_000L, 4L, "Oil Press"));
        assertThat(read.only().dips()).isEmpty();
        assertThat(read.only().oilAtSpeed()).isGreaterThan(3);
        assertThat(read.only().lasted()).isEqualTo(1_451_950_000L);
    }

    @Test
    void semicolons_decimal_commas_and_a_row_of_units_are_understood() {
        Reads.Read read = read(LoggerFiles.semicolons());
        assertThat(read.recognised().questions()).isEmpty();
        assertThat(read.recognised().form().decimal()).isEqualTo(',');
        assertThat(read.recognised().form().columns())
                .filteredOn(column -> column.stated())
                .hasSize(7);
        assertThat(read.recognised().rows()).hasSize(20);
        assertThat(read.only().speed().running()).isEqualTo(1_307_950);
        assertThat(read.defects().times()).isEmpty();
    }

    @Test
    void over_the_limit_with_the_throttle_shut_is_one_mechanical_over_rev() {
        Reduction found = read(LoggerFiles.mechanicalOverRev()).only();
        assertThat(found.overRevs())
                .containsExactly(new Excursion(820_000_000L, 420_000L, 21, 9340, Excursion.How.MECHANICAL, 3, 0.0));
    }

    @Test
    void a_single_sample_of_19800_rpm_is_no_over_rev() {
        Reads.Read read = read(LoggerFiles.spike());
        assertThat(read.only().overRevs()).isEmpty();
        assertThat(read.defects().of(DefectKind.SPIKE))
                .containsExactly(new Defect(DefectKind.SPIKE, "Engine Speed", 0, 617_250_000L, 617_250_000L, 1));
        assertThat(read.only().speed().running()).isEqualTo(1_679_950);
    }

    @Test
    void water_that_falls_while_the_engine_is_hot_is_told() {
        Reduction found = read(LoggerFiles.steam()).only();
        assertThat(found.falls()).singleElement().satisfies(fall -> {
            assertThat(fall.to()).isEqualTo(62);
            assertThat(fall.from()).isGreaterThan(90);
            assertThat(fall.at()).isBetween(900_000_000L, 930_000_000L);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "NaN"})
    void a_hole_of_three_seconds_is_bridged_and_marked_and_falling_oil_pressure_shown(String lost) {
        Reads.Read read = read(LoggerFiles.declining(lost));
        DefectKind kind = lost.equals("0") ? DefectKind.DROPOUT : DefectKind.GAP;
        assertThat(read.defects().of(kind))
                .singleElement()
                .satisfies(hole -> assertThat(hole.until() - hole.from()).isBetween(3_100_000L, 3_200_000L));
        Reduction found = read.only();
        assertThat(found.speed().running()).isEqualTo(893_950);
        assertThat(found.speed().running() - found.speed().covered()).isEqualTo(3200);
        OilTrend trend = found.oilTrend();
        assertThat(trend.declined()).isNotNull().isLessThan(0.7 * trend.first());
        assertThat(found.dips()).isNotEmpty();
        assertThat(found.oilAtSpeed()).isLessThan(2);
    }

    @Test
    void a_time_base_ten_times_too_slow_is_refused() {
        Reduction found = read(LoggerFiles.wrongTimeBase()).only();
        RunFigures run = new RunFigures(new RunningTime(1_656_000), null, null);
        assertThat(TimeBaseCheck.of(found, run)).hasValueSatisfying(problem -> {
            assertThat(problem.kind()).isEqualTo(ProblemKind.TRACE_TIME_BASE);
            assertThat(problem.facts().get(2)).hasToString("10");
        });
        RunFigures byLaps = new RunFigures(null, 12, new RunningTime(130_000));
        assertThat(TimeBaseCheck.of(found, byLaps)).isPresent();
        Reduction right = read(LoggerFiles.twice()).only();
        assertThat(TimeBaseCheck.of(right, new RunFigures(new RunningTime(1_500_000), 11, null)))
                .isEmpty();
    }

    @Test
    void a_channel_that_is_not_there_is_not_logged() {
        Reduction found = read(LoggerFiles.withoutOilTemperature()).only();
        assertThat(found.logs(ChannelKind.OIL_TEMPERATURE)).isFalse();
        assertThat(found.extremes(ChannelKind.OIL_TEMPERATURE)).isEmpty();
        assertThat(found.logs(ChannelKind.WATER_TEMPERATURE)).isTrue();
    }

    @Test
    void a_clock_of_the_year_2000_was_not_set() {
        Reads.Read read = read(LoggerFiles.clockNotSet());
        assertThat(read.recognised().questions())
                .containsExactly(Question.of(Question.Kind.CLOCK_NOT_SET, -1, LocalDate.of(2000, 1, 1)));
        assertThat(read.recognised().open()).isEmpty();
        assertThat(read.only().speed().running()).isEqualTo(4_299_950);
        assertThat(List.of(read.only().coverage())).containsExactly(1.0);
    }
}
