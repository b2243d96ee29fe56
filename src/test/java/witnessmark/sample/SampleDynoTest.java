package witnessmark.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.logbook.Desk;
import witnessmark.logbook.dyno.SeeDyno;
import witnessmark.quantity.Pressure;
import witnessmark.study.result.CurvePoint;
import witnessmark.study.result.DynoAnswer;
import witnessmark.study.result.DynoVerdict;

/** The dyno days of the sample season against its table 14.6: what is printed there is corrected to 25 °C and 99 kPa dry. */
class SampleDynoTest {
    private static Desk desk;

    @BeforeAll
    static void walkToTheEnd(@TempDir Path folder) {
        SampleBooks books = new SampleBooks(folder);
        desk = books.open();
        books.tellAll(desk);
    }

    @AfterAll
    static void close() {
        desk.logbook().close();
    }

    private static DynoAnswer of(String number, String day) {
        Entry<Engine> engine =
                desk.view().facts().of(Engine.class).named(number).orElseThrow();
        List<DynoAnswer> answers = SeeDyno.of(desk.view(), engine.id());
        return answers.stream()
                .filter(answer -> answer.run().fact().start().day().equals(LocalDate.parse(day)))
                .findFirst()
                .orElseThrow();
    }

    /** Curve D01 as printed: N·m to a tenth, kW to a tenth; channels as printed. */
    @ParameterizedTest
    @CsvSource({
        "4000, 171.0, 71.6, 870, 4.1, 758 752 763 756",
        "4500, 179.5, 84.6, 880, 4.2, 766 760 772 764",
        "5000, 188.2, 98.5, 880, 4.2, 775 769 780 773",
        "5500, 194.6, 112.1, 880, 4.3, 784 778 788 782",
        "6100, 198.1, 126.5, 880, 4.4, 794 788 799 792",
        "6500, 197.0, 134.1, 880, 4.4, 800 794 806 798",
        "7000, 193.8, 142.1, 880, 4.5, 809 803 814 807",
        "7400, 190.3, 147.5, 880, 4.6, 816 810 821 814",
        "7800, 186.6, 152.4, 880, 4.6, 823 817 828 821",
        "8100, 178.0, 151.0, 880, 4.7, 828 822 833 826",
    })
    void the_mean_of_the_first_sheet_is_the_printed_curve(
            int rpm, double torque, double power, int lambda, String bar, String exhaust) {
        DynoAnswer answer = of("K03", "2026-02-17");
        CurvePoint point = answer.mean().stream()
                .filter(each -> each.rpm() == rpm)
                .findFirst()
                .orElseThrow();

        assertThat(point.torque()).isCloseTo(torque, within(0.05));
        assertThat(point.power()).isCloseTo(power, within(0.1));
        assertThat(point.pulls()).isEqualTo(3);
        assertThat(desk.view()
                        .facts()
                        .of(DynoPoint.class)
                        .where(each -> each.sheet().equals(answer.sheet().id())
                                && each.speed().rpm() == rpm))
                .hasSize(3)
                .allSatisfy(each -> {
                    assertThat(each.fact().lambdaThousandths()).isEqualTo(lambda);
                    assertThat(each.fact().oilPressure()).isEqualTo(Pressure.parse(bar));
                    assertThat(each.fact().exhaust()).isEqualTo(exhaust);
                });
    }

    /** Peaks as printed, factors 0.985 to 1.024, and what 14.6 and 14.11 made of each. */
    @ParameterizedTest(name = "{0} on {1}")
    @CsvSource({
        "K03, 2026-02-17, 152.4, 7800, 198.1, 6100, BASELINE, 0",
        "K05, 2026-02-18, 150.9, 7800, 196.6, 6100, BASELINE, 0",
        "K06, 2026-03-10, 153.0, 7800, 198.7, 6100, BASELINE, 0",
        "K03, 2026-05-20, 151.6, 7800, 197.6, 6100, ALIKE, -0.5",
        "K06, 2026-06-24, 153.7, 7750, 199.6, 6050, ALIKE, 0.5",
        "K06, 2026-08-27, 151.5, 7800, 197.2, 6100, ALIKE, -1.0",
        "K05, 2026-09-17, 151.8, 7800, 197.4, 6100, BASELINE, 0",
    })
    void each_day_has_its_peaks_and_its_verdict(
            String engine,
            String day,
            double power,
            int powerAt,
            double torque,
            int torqueAt,
            DynoVerdict verdict,
            double percent) {
        DynoAnswer answer = of(engine, day);
        CurvePoint highest = Objects.requireNonNull(answer.power());
        CurvePoint strongest = Objects.requireNonNull(answer.torque());

        assertThat(highest.power()).isCloseTo(power, within(0.1));
        assertThat(highest.rpm()).isEqualTo(powerAt);
        assertThat(strongest.torque()).isCloseTo(torque, within(0.1));
        assertThat(strongest.rpm()).isEqualTo(torqueAt);
        assertThat(answer.factor().factor()).isNotNull();
        assertThat(answer.factor().factor()).isBetween(0.985, 1.024);
        assertThat(answer.change().verdict()).isEqualTo(verdict);
        if (percent != 0) {
            assertThat(100 * answer.change().peak()).isCloseTo(percent, within(0.1));
        }
    }

    /** In the order of handbook 10.1, and less than the engine ran that day. */
    @Test
    void an_engine_is_run_in_before_its_pulls() {
        for (String[] each : new String[][] {
            {"K03", "2026-02-17"}, {"K05", "2026-02-18"}, {"K06", "2026-03-10"}, {"K05", "2026-09-17"}
        }) {
            DynoAnswer answer = of(each[0], each[1]);
            long together = answer.steps().stream()
                    .mapToLong(step -> step.fact().lasted().millis())
                    .sum();
            assertThat(answer.steps()).hasSize(6);
            assertThat(together).isBetween(1L, answer.run().fact().running().millis() - 1);
        }
    }
}
