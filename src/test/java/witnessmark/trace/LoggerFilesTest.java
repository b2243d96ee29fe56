package witnessmark.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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
    private static final Path SHIPPED = Path.of(System.getProperty("project.basedir", "."), "sample-season", "traces");

    private static final TraceSettings SETTINGS =
            TraceSettings.usual().with(TraceSetting.OVER_REV_ABOVE, 8500).with(TraceSetting.OIL_FLOOR_ABOVE, 5000);

    private static Reads.Read read(String text) {
        return Reads.of(text.getBytes(StandardCharsets.UTF_8), SETTINGS);
    }

    @Test
    void oil_pressure_at_nothing_and_back_at_once_is_the_sensor() {
        Reads.Read read = read(LoggerFiles.falseDips());
        assertThat(read.defects().of(DefectKind.SENSOR_DROP))
                .extracting(Defect::from, Defect::until, Defect::samples, Defect::channel)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(620_000_000L, 620_200_000L, 4L, "Oil Press"),
                        org.assertj.core.groups.Tuple.tuple(1_160_000_000L, 1_160_200_000L, 4L, "Oil Press"));
        assertThat(read.only().dips()).isEmpty();
        assertThat(read.only().oilAtSpeed()).isEqualTo(4.5);
        assertThat(read.only().lasted()).isEqualTo(1_452_000_000L);
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
        assertThat(read.only().speed().running()).isEqualTo(1_308_000);
        assertThat(read.defects().times()).isEmpty();
    }

    @Test
    void over_the_limit_with_the_throttle_shut_is_one_mechanical_over_rev() {
        Reduction found = read(LoggerFiles.mechanicalOverRev()).only();
        assertThat(found.overRevs())
                .containsExactly(new Excursion(1_127_420_000L, 420_000L, 21, 9340, Excursion.How.MECHANICAL, 2, 0.0));
    }

    @Test
    void a_single_sample_of_19800_rpm_is_no_over_rev() {
        Reads.Read read = read(LoggerFiles.spike());
        assertThat(read.only().overRevs()).isEmpty();
        assertThat(read.defects().of(DefectKind.SPIKE))
                .containsExactly(new Defect(DefectKind.SPIKE, "Engine Speed", 0, 817_250_000L, 817_250_000L, 1));
        assertThat(read.only().speed().running()).isEqualTo(1_680_000);
    }

    @Test
    void water_that_falls_while_the_engine_is_hot_is_told() {
        Reduction found = read(LoggerFiles.steam()).only();
        assertThat(found.falls()).singleElement().satisfies(fall -> {
            assertThat(fall.to()).isEqualTo(62);
            assertThat(fall.from()).isGreaterThan(90);
            assertThat(fall.at()).isBetween(1_220_000_000L, 1_240_000_000L);
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
        assertThat(found.speed().running()).isEqualTo(894_000);
        assertThat(found.speed().running() - found.speed().covered()).isEqualTo(3200);
        OilTrend trend = found.oilTrend();
        assertThat(trend.declined()).isNotNull().isLessThan(0.7 * trend.first());
        assertThat(found.dips()).isNotEmpty();
        assertThat(found.oilAtSpeed()).isEqualTo(1.9);
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
        assertThat(read.only().speed().running()).isEqualTo(4_230_000);
        assertThat(List.of(read.only().coverage())).containsExactly(1.0);
    }

    static Stream<String> names() {
        return LoggerFiles.all().keySet().stream();
    }

    /** The text, since zip programs differ; {@code -DupdateGolden=true} writes a file that differs anew. */
    @ParameterizedTest
    @MethodSource("names")
    void what_the_sample_season_ships_is_what_is_made_here(String name) throws IOException {
        Path file = SHIPPED.resolve(name + ".gz");
        byte[] made = LoggerFiles.all().get(name).get().getBytes(StandardCharsets.UTF_8);
        if (Boolean.getBoolean("updateGolden") && !Arrays.equals(made, shipped(file))) {
            Files.createDirectories(SHIPPED);
            try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file)) {
                {
                    def.setLevel(Deflater.BEST_COMPRESSION);
                }
            }) {
                out.write(made);
            }
        }
        assertThat(shipped(file)).as("the file as it is made now").isEqualTo(made);
    }

    @Test
    void the_files_shipped_are_small() throws IOException {
        long bytes = 0;
        try (Stream<Path> all = Files.list(SHIPPED)) {
            for (Path file : all.toList()) {
                assertThat(file.getFileName().toString())
                        .isIn(names().map(name -> name + ".gz").toArray());
                bytes += Files.size(file);
            }
        }
        assertThat(bytes).isLessThan(4 << 20);
    }

    private static byte[] shipped(Path file) throws IOException {
        if (!Files.exists(file)) {
            return new byte[0];
        }
        try (InputStream in = new GZIPInputStream(Files.newInputStream(file))) {
            return in.readAllBytes();
        }
    }
}
