package witnessmark.logbook.dyno;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Id;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;
import witnessmark.study.result.PullColumn;

/** Pulls as people type and paste them. Figures are of curve D01 of the sample season unless a line says otherwise. */
class PullTextTest {
    private static final Id<DynoSheet> SHEET = new Id<>(new UUID(0, 7));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "4000 171.0\n6100 198.1",
                "4000\t171,0\n6100\t198,1",
                "4000; 171.0\n6100; 198.1\n",
                "4 000;171,0\n6 100;198,1",
                "4000, 171.0\n6100, 198.1",
                "4000,171.0\n6100,198.1",
                "rpm N·m\n4000 171.0\n6100 198.1",
                "torque (Nm)\tspeed (rpm)\n171,0\t4000\n198,1\t6100",
                "N·m;lambda;rpm\n171.0;0.87;4000\n198.1;-;6100",
                "engine speed; torque; noise\n4000;171;98\n6100;198.1;99",
                "pull 1\n4000 171.0\n6100 198.1\n\n",
                "\n\n6100.0\t198.1\n4000.0\t171.0",
            })
    void however_they_come_they_are_the_same_two_points(String text) {
        PullText.Read read = PullText.read(text, SHEET);

        assertThat(read.problems()).isEmpty();
        assertThat(read.points())
                .extracting(point -> point.pull() + " " + point.speed().rpm() + " " + point.torqueMillinewtonMetres())
                .containsExactlyInAnyOrder("1 4000 171000", "1 6100 198100");
    }

    @Test
    void every_column_of_a_printed_sheet_is_read_with_a_heading_and_without() {
        String row = "4000 171.0 71.6 0.87 4.1 96 82 758 752 763 756";
        DynoPoint expected = new DynoPoint(
                SHEET,
                1,
                new EngineSpeed(4000),
                171_000,
                870,
                new Pressure(410_000),
                Temperature.parse("96"),
                Temperature.parse("82"),
                "758 752 763 756");

        PullText.Read bare = PullText.read(row, SHEET);
        PullText.Read headed =
                PullText.read("rpm N·m kW lambda oil P bar oil T °C water °C EGT1 °C EGT2 EGT3 EGT4\n" + row, SHEET);

        assertThat(bare.points()).containsExactly(expected);
        assertThat(bare.headed()).isFalse();
        assertThat(headed.points()).containsExactly(expected);
        assertThat(headed.notTaken()).isEmpty();
    }

    @Test
    void a_third_column_that_is_no_power_is_lambda() {
        PullText.Read read = PullText.read("4000 171.0 0.87\n6100 198.1 0.88", SHEET);

        assertThat(read.columns()).containsExactly(PullColumn.SPEED, PullColumn.TORQUE, PullColumn.LAMBDA);
        assertThat(read.points()).extracting(DynoPoint::lambdaThousandths).containsExactly(870, 880);
    }

    /** 171.0 N·m is 126.12 lbf·ft; 126.5 kW is 172.0 metric hp and 169.6 hp at 6100 (NIST SP 811, appendix B.8). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rpm; lb·ft | 4000; 126.1234 | 171000",
                "rpm; kW | 6100; 126.5444 | 198100",
                "rpm; ps | 6100; 172.0526 | 198100",
                "rpm; hp | 6100; 169.6989 | 198100",
            })
    void other_units_and_power_are_turned_to_torque(String heading, String line, int millinewtonMetres) {
        PullText.Read read = PullText.read(heading + "\n" + line, SHEET);

        assertThat(read.problems()).isEmpty();
        assertThat(read.points().get(0).torqueMillinewtonMetres())
                .isCloseTo(millinewtonMetres, org.assertj.core.api.Assertions.within(20));
        assertThat(read.fromPower()).isEqualTo(!heading.contains("lb"));
    }

    @Test
    void fahrenheit_and_psi_are_said_in_the_heading() {
        DynoPoint point = PullText.read("rpm; N·m; oil psi; oil °F; water °F\n4000; 171; 60; 212; 176", SHEET)
                .points()
                .get(0);

        assertThat(point.oil()).isEqualTo(Temperature.parse("100"));
        assertThat(point.water()).isEqualTo(Temperature.parse("80"));
        assertThat(point.oilPressure()).isEqualTo(new Pressure(413_685)); // 60 times 6 894.757
    }

    @Test
    void a_blank_line_or_its_number_begins_the_next_pull() {
        PullText.Read read = PullText.read("4000 171\n5000 188\n\n4000 170\n5000 187\npull 7\n4000 169\n", SHEET);

        assertThat(read.points()).extracting(DynoPoint::pull).containsExactly(1, 1, 2, 2, 7);
        assertThat(read.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4000 171#4000 172 | DYNO_SPEED_TWICE | 2",
                "4000 10000 | DYNO_OUT_OF_RANGE | 1",
                "4000;10 000 | DYNO_OUT_OF_RANGE | 1",
                "4000 10 000 | DYNO_OUT_OF_RANGE | 1",
                "171.0 4000 | DYNO_OUT_OF_RANGE | 1",
                "4000 171#5000 | DYNO_LINE_WIDTH | 2",
                "4000 171#5000 188 0.88 | DYNO_LINE_WIDTH | 2",
                "4000 much | DYNO_LINE_UNREAD | 1",
                "4000 171#5000 1.8.8 | DYNO_LINE_UNREAD | 2",
                "hello | DYNO_LINE_UNREAD | 1",
                "rpm; lambda#4000; 0.87 | DYNO_NO_TORQUE | 1",
                "rpm; N·m; water °C#4000; 171; 900 | DYNO_OUT_OF_RANGE | 2",
                "rpm; N·m; kW#4000; 171; 71.6#5000; 188.2; 150 | DYNO_POWER_OTHERWISE | 3",
            })
    void what_is_wrong_is_named_with_its_line(String text, ProblemKind kind, int line) {
        List<Problem> problems = PullText.read(text.replace('#', '\n'), SHEET).problems();

        assertThat(problems.get(0).kind()).isEqualTo(kind);
        assertThat(problems.get(0).facts().get(0)).isEqualTo(line);
    }

    static List<Long> seeds() {
        return new Random(20260217).longs(40).boxed().toList();
    }

    /** Round trip: what a correction shows reads back exactly, so that nothing nobody touched is amended. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void any_points_read_back_from_their_lines(long seed) {
        Random random = new Random(seed);
        List<DynoPoint> points = new ArrayList<>();
        for (int pull = 1; pull <= 1 + random.nextInt(4); pull++) {
            TreeSet<Integer> speeds = new TreeSet<>();
            random.ints(1 + random.nextInt(12), 500, 12_000).forEach(speeds::add);
            for (int rpm : speeds) {
                points.add(point(random, pull, rpm));
            }
        }

        PullText.Read read = PullText.read(WrittenPulls.text(points), SHEET);

        assertThat(read.problems()).isEmpty();
        assertThat(read.points()).isEqualTo(points);
    }

    private static DynoPoint point(Random random, int pull, int rpm) {
        boolean all = random.nextInt(4) > 0;
        String exhaust = random.ints(random.nextInt(5), 300, 950)
                .mapToObj(heat -> random.nextInt(6) == 0 ? "-" : Integer.toString(heat))
                .collect(Collectors.joining(" "));
        boolean none = exhaust.replace("-", "").isBlank() || exhaust.endsWith("-");
        return new DynoPoint(
                SHEET,
                pull,
                new EngineSpeed(rpm),
                1_000 + random.nextInt(400_000),
                all ? 700 + random.nextInt(400) : null,
                all ? new Pressure(random.nextInt(900_000)) : null,
                random.nextBoolean() ? new Temperature(273_150 + random.nextInt(130_000)) : null,
                all ? new Temperature(260_000 + random.nextInt(120_000)) : null,
                none ? "" : exhaust);
    }
}
