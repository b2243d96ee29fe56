package witnessmark.study.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.AirPressure;
import witnessmark.domain.CorrectionKind;
import witnessmark.domain.DynoFigures;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.ledger.Story;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;
import witnessmark.study.result.DynoAnswer;
import witnessmark.study.result.DynoChange;
import witnessmark.study.result.DynoFactor;
import witnessmark.study.result.DynoVerdict;

/** Sheets of one invented engine on one dyno. */
class DynoSheetsTest {
    private final Story story = new Story();
    private final Id<Engine> engine = story.engine("K03", story.design("Four"));
    private int hour;

    /** Test days of case AT2: forms of the standards named there, vapour pressure by IAPWS R7-97; in its own tolerance. */
    @ParameterizedTest(name = "{0} by {4}")
    @CsvSource({
        "hot humid, 98.2, 33.0, 700, DIN_70020, 1.054204488, 1e-6",
        "cool dry,  102.1, 12.0, 350, DIN_70020, 0.9785258952, 1e-6",
        "reference, 99.0, 25.0, 0, SAE_J1349, 1, 2e-4",
        "reference, 99.0, 25.0, 0, ISO_1585, 1, 2e-4",
        "reference, 99.0, 25.0, 0, DIN_70020, 1.031926042, 1e-6"
    })
    void a_sheet_is_turned_to_the_reference_day_of_its_standard(
            String day,
            String kilopascals,
            String celsius,
            int permille,
            CorrectionKind kind,
            double factor,
            double by) {
        DynoFactor worked = Factors.of(sheet(kind, kilopascals, AirPressure.TOTAL, celsius, permille, null));

        assertThat(worked.factor())
                .as(day)
                .isNotNull()
                .satisfies(own -> assertThat(own).isCloseTo(factor, within(by * factor)));
        assertThat(worked.refused()).isEmpty();
    }

    /** AT2 again: 1.0720 and 1.0704 on a hot humid day lie beyond what the codes accept, and 12 °C below it. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "98.2, 33.0, 700, ISO_1585, 1.071964797, FACTOR_ABOVE",
        "98.2, 33.0, 700, SAE_J1349, 1.070352433, FACTOR_ABOVE",
        "102.1, 12.0, 350, ISO_1585, 0.9436712327, TOO_COLD",
        "84.5, 24.0, 300, SAE_J1349, 1.214949955, TOO_THIN"
    })
    void what_a_standard_was_not_made_for_is_refused_and_said(
            String kilopascals, String celsius, int permille, CorrectionKind kind, double factor, DynoFactor.Why why) {
        DynoFactor worked = Factors.of(sheet(kind, kilopascals, AirPressure.TOTAL, celsius, permille, null));

        assertThat(worked.factor()).isNull();
        assertThat(worked.worked())
                .isNotNull()
                .satisfies(own -> assertThat(own).isCloseTo(factor, within(2e-4 * factor)));
        assertThat(worked.refused()).contains(why);
        assertThat(worked.corrects()).isFalse();
    }

    /** 94.67544164 kPa is what case AT2 leaves of 98.2 kPa without its vapour. */
    @Test
    void dry_pressure_and_total_pressure_of_the_same_air_give_the_same_factor() {
        for (CorrectionKind kind :
                List.of(CorrectionKind.SAE_J1349, CorrectionKind.ISO_1585, CorrectionKind.DIN_70020)) {
            DynoFactor total = Factors.of(sheet(kind, "98.2", AirPressure.TOTAL, "33", 700, null));
            DynoFactor dry = Factors.of(sheet(kind, "94.675442", AirPressure.DRY, "33", 700, null));

            assertThat(dry.worked())
                    .isNotNull()
                    .satisfies(own -> assertThat(own).isCloseTo(total.worked(), within(1e-4)));
        }
        assertThat(Factors.of(sheet(CorrectionKind.SAE_J1349, "94.675442", AirPressure.DRY, "33", null, null))
                        .missing())
                .as("dry pressure needs no humidity")
                .isEmpty();
    }

    @Test
    void what_is_not_written_down_is_named() {
        DynoFactor worked = Factors.of(new DynoSheet(
                new Id<>(new UUID(0, 1)),
                "A",
                DynoFigures.OBSERVED,
                CorrectionKind.ISO_1585,
                null,
                null,
                AirPressure.TOTAL,
                null,
                null,
                null,
                "",
                "",
                "",
                "",
                "",
                false,
                "",
                ""));

        assertThat(worked.missing())
                .containsExactly(DynoFactor.Needed.PRESSURE, DynoFactor.Needed.AIR, DynoFactor.Needed.HUMIDITY);
        assertThat(worked.factor()).isNull();
    }

    @Test
    void what_the_dyno_multiplied_by_is_told_from_what_its_air_asks_for() {
        DynoFactor honest = Factors.of(sheet(CorrectionKind.SAE_J1349, "99", AirPressure.TOTAL, "25", 0, 1_000_500));
        DynoFactor strange = Factors.of(sheet(CorrectionKind.SAE_J1349, "99", AirPressure.TOTAL, "25", 0, 1_030_000));

        assertThat(honest.differs()).isFalse();
        assertThat(strange.differs()).isTrue();
        assertThat(strange.factor()).isEqualTo(1.03);
    }

    /** Power in kW is torque in N·m times speed in rpm over 9549.297 (60 000 / 2π): 186.6 at 7800 is 152.4. */
    @Test
    void the_mean_of_the_pulls_is_told_with_its_peaks_and_how_they_repeat() {
        Id<DynoSheet> sheet = add(true, "A");
        pull(sheet, 1, 1.0, 4000, 171.0, 6100, 198.1, 7800, 186.6, 8100, 178.0);
        pull(sheet, 2, 1.01, 4000, 171.0, 6100, 198.1, 7800, 186.6, 8100, 178.0);
        pull(sheet, 3, 0.99, 4000, 171.0, 6100, 198.1, 7800, 186.6, 8100, 178.0);

        DynoAnswer answer = answers().get(0);

        assertThat(answer.power()).isNotNull();
        assertThat(answer.power().rpm()).isEqualTo(7800);
        assertThat(answer.power().power()).isCloseTo(152.4, within(0.05));
        assertThat(answer.torque()).isNotNull();
        assertThat(answer.torque().torque()).isCloseTo(198.1, within(0.001));
        assertThat(answer.repeats()).as("1, 1.01 and 0.99 deviate by 0.01").isNotNull();
        assertThat(answer.repeats()).isCloseTo(0.01, within(1e-9));
        assertThat(answer.change().verdict()).isEqualTo(DynoVerdict.BASELINE);
    }

    /** 2 % at the peak or 3 % anywhere is worth a look, over 4 % a strip (common practice, no source). */
    @ParameterizedTest(name = "{0} times as much: {1}")
    @CsvSource({
        "1.000, ALIKE",
        "0.995, ALIKE",
        "0.990, ALIKE",
        "0.983, LESS",
        "0.975, LOOK",
        "0.950, STRIP",
        "1.012, ALIKE",
        "1.030, MORE"
    })
    void a_drop_is_called_only_beyond_what_the_dyno_repeats(double times, DynoVerdict verdict) {
        twoPulls(add(true, "A"), 1);
        twoPulls(add(false, "A"), times);

        DynoChange change = answers().get(1).change();

        assertThat(change.verdict()).isEqualTo(verdict);
        assertThat(change.peak()).isCloseTo(times - 1, within(1e-5));
        assertThat(change.area()).isCloseTo(times - 1, within(1e-5));
        assertThat(change.worst()).isCloseTo(times - 1, within(1e-5));
        assertThat(change.peakMoved()).isZero();
    }

    @Test
    void pulls_that_scatter_widely_keep_a_drop_from_being_called() {
        Id<DynoSheet> first = add(true, "A");
        Id<DynoSheet> second = add(false, "A");
        for (int i = 0; i < 3; i++) {
            pull(first, i + 1, 1 + (i - 1) * 0.02, 4000, 170.0, 7800, 186.6);
            pull(second, i + 1, 0.97 + (i - 1) * 0.02, 4000, 170.0, 7800, 186.6);
        }

        DynoChange change = answers().get(1).change();

        assertThat(change.noiseFromPulls()).isTrue();
        // t(0.975, 4) = 2.776 (Student's table, NIST/SEMATECH e-Handbook 1.3.6.7.2) times 0.02 times √(2/3)
        assertThat(change.noise()).isCloseTo(2.776 * 0.02 * Math.sqrt(2.0 / 3), within(2e-3));
        assertThat(change.verdict()).isEqualTo(DynoVerdict.ALIKE);
    }

    @Test
    void a_drop_at_one_speed_alone_is_found_there() {
        Id<DynoSheet> first = add(true, "A");
        pull(first, 1, 1, 4000, 170.0, 5000, 188.0, 6000, 198.0, 7800, 186.6);
        Id<DynoSheet> second = add(false, "A");
        pull(second, 1, 1, 4000, 170.0, 5000, 180.0, 6000, 198.0, 7800, 186.6);

        DynoChange change = answers().get(1).change();

        assertThat(change.verdict()).isEqualTo(DynoVerdict.LOOK);
        assertThat(change.worstRpm()).isEqualTo(5000);
        assertThat(change.worst()).isCloseTo(180.0 / 188 - 1, within(1e-9));
        assertThat(change.peak()).isZero();
    }

    @Test
    void other_dynos_and_other_corrections_are_never_compared() {
        twoPulls(add(true, "A"), 1);
        twoPulls(add(false, "B"), 0.9);
        Id<Run> run = run();
        twoPulls(
                story.add(sheet(run, CorrectionKind.DIN_70020, "99", AirPressure.TOTAL, "25", 0, null, false, "A")),
                0.9);

        assertThat(answers().get(1).change().verdict()).isEqualTo(DynoVerdict.OTHER_DYNO);
        assertThat(answers().get(2).change().verdict()).isEqualTo(DynoVerdict.OTHER_CORRECTION);
    }

    static List<Long> seeds() {
        return new Random(20261129).longs(30).boxed().toList();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void the_order_in_which_points_were_written_changes_nothing(long seed) {
        Random random = new Random(seed);
        List<DynoPoint> points = new ArrayList<>();
        Id<DynoSheet> sheet = add(true, "A");
        for (int pull = 1; pull <= 3; pull++) {
            for (int rpm = 3000; rpm <= 8000; rpm += 250 + random.nextInt(300)) {
                points.add(point(sheet, pull, rpm, 150 + 50 * random.nextDouble()));
            }
        }
        DynoAnswer one = DynoSheets.alone(
                story.facts().of(DynoSheet.class).find(sheet).orElseThrow(),
                story.facts().of(Run.class).all().get(0),
                points);
        Collections.shuffle(points, random);
        DynoAnswer other = DynoSheets.alone(
                story.facts().of(DynoSheet.class).find(sheet).orElseThrow(),
                story.facts().of(Run.class).all().get(0),
                points);

        assertThat(other.mean()).isEqualTo(one.mean());
        assertThat(other.repeats()).isEqualTo(one.repeats());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5})
    void a_sheet_without_a_baseline_before_it_says_so(int pulls) {
        Id<DynoSheet> sheet = add(false, "A");
        for (int i = 1; i <= pulls; i++) {
            pull(sheet, i, 1, 4000, 170.0, 7800, 186.6);
        }
        DynoAnswer answer = answers().get(0);

        assertThat(answer.change().verdict()).isEqualTo(DynoVerdict.NO_BASELINE);
        assertThat(answer.change().peak()).isNaN();
        assertThat(answer.repeats() == null).isEqualTo(pulls == 1);
    }

    private List<DynoAnswer> answers() {
        return new DynoSheets(story.facts()).of(engine);
    }

    private void twoPulls(Id<DynoSheet> sheet, double times) {
        pull(sheet, 1, times, 4000, 171.0, 6100, 198.1, 7800, 186.6, 8100, 178.0);
        pull(sheet, 2, times, 4000, 171.0, 6100, 198.1, 7800, 186.6, 8100, 178.0);
    }

    private Id<DynoSheet> add(boolean baseline, String dyno) {
        return story.add(
                sheet(run(), CorrectionKind.SAE_J1349, "99", AirPressure.TOTAL, "25", 0, null, baseline, dyno));
    }

    private Id<Run> run() {
        hour++;
        return story.run(engine, null, Story.at("2026-02-01T00:00:00Z").plus(Story.minutes(hour * 120L)), 60);
    }

    private void pull(Id<DynoSheet> sheet, int number, double times, double... speedAndTorque) {
        for (int i = 0; i < speedAndTorque.length; i += 2) {
            story.add(point(sheet, number, (int) speedAndTorque[i], speedAndTorque[i + 1] * times));
        }
    }

    private static DynoPoint point(Id<DynoSheet> sheet, int pull, int rpm, double torque) {
        return new DynoPoint(
                sheet, pull, new EngineSpeed(rpm), (int) Math.round(torque * 1_000), null, null, null, null, "");
    }

    private static DynoSheet sheet(
            CorrectionKind kind,
            String kilopascals,
            AirPressure which,
            String celsius,
            @Nullable Integer permille,
            @Nullable Integer factor) {
        return sheet(new Id<>(new UUID(0, 1)), kind, kilopascals, which, celsius, permille, factor, false, "A");
    }

    private static DynoSheet sheet(
            Id<Run> run,
            CorrectionKind kind,
            String kilopascals,
            AirPressure which,
            String celsius,
            @Nullable Integer permille,
            @Nullable Integer factor,
            boolean baseline,
            String dyno) {
        return new DynoSheet(
                run,
                dyno,
                factor == null ? DynoFigures.OBSERVED : DynoFigures.CORRECTED,
                kind,
                factor,
                Pressure.ofBar(new BigDecimal(kilopascals).movePointLeft(2)),
                which,
                Temperature.ofCelsius(new BigDecimal(celsius)),
                permille,
                300,
                "",
                "",
                "",
                "",
                "",
                baseline,
                "",
                "");
    }
}
