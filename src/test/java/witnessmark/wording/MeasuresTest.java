package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.LengthUnit;
import witnessmark.quantity.typed.PressureUnit;
import witnessmark.quantity.typed.TemperatureUnit;
import witnessmark.quantity.typed.TypedDate;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedTime;

class MeasuresTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private final Texts texts = Texts.in(Locale.UK);
    private final Measures metric = new Measures(texts, Units.METRIC);
    private final Measures imperial = new Measures(texts, Units.IMPERIAL);

    @ParameterizedTest(name = "{0} s is shown as {1}")
    @CsvSource({
        "0, 0 s",
        "45, 45 s",
        "60, 1 min",
        "1650, 27 min 30 s",
        "3599.4, 59 min 59 s",
        "3599.5, 1 h",
        "4800, 1 h 20 min",
        "4830, 1 h 20 min 30 s",
        "36000, 10 h",
    })
    void a_run_is_shown_in_hours_minutes_and_seconds(String seconds, String shown) {
        assertThat(metric.running(RunningTime.parse(seconds))).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{0} s is said back as {1}")
    @CsvSource({
        "4800, 1 h 20 min (80 min)",
        "4830, 1 h 20 min 30 s (80.5 min)",
        "3600, 1 h (60 min)",
        "1650, 27 min 30 s",
    })
    void an_hour_and_more_is_said_in_minutes_as_well(String seconds, String shown) {
        assertThat(metric.runningBothWays(RunningTime.parse(seconds))).isEqualTo(shown);
    }

    /** Halves are rounded up, so that no two reports of one life differ in their last figure. */
    @ParameterizedTest(name = "{0} h is shown as {1}")
    @CsvSource({
        "12.87, 12.87 h, 12.9 h",
        "3.195, 3.20 h, 3.2 h",
        "6.385, 6.39 h, 6.4 h",
        "7.185, 7.19 h, 7.2 h",
        "10.465, 10.47 h, 10.5 h",
        "33.275, 33.28 h, 33.3 h",
        "0, 0.00 h, 0.0 h",
        "0.85, 0.85 h, 0.9 h",
    })
    void a_life_is_shown_in_decimal_hours(BigDecimal hours, String fine, String rough) {
        RunningTime time = RunningTime.ofHours(hours);
        assertThat(metric.hours(time)).isEqualTo(fine);
        assertThat(metric.roughHours(time)).isEqualTo(rough);
    }

    @Test
    void thousands_are_set_apart_by_a_thin_space() {
        assertThat(metric.speed(new EngineSpeed(9150))).isEqualTo("9\u2009150 rpm");
        assertThat(metric.speed(new EngineSpeed(850))).isEqualTo("850 rpm");
        assertThat(metric.distance(new Distance(2_310_400))).isEqualTo("2\u2009310.4 km");
        assertThat(metric.number(1_234_567)).isEqualTo("1\u2009234\u2009567");
        assertThat(metric.number(-100)).isEqualTo("\u2212100");
        assertThat(metric.number(new BigDecimal("-1234.5"), 2)).isEqualTo("\u22121\u2009234.50");
    }

    @Test
    void the_decimal_mark_is_that_of_the_language() {
        Measures german = new Measures(Texts.in(Locale.GERMANY), Units.METRIC);
        assertThat(german.hours(RunningTime.ofHours(new BigDecimal("12.87")))).isEqualTo("12,87 h");
    }

    @ParameterizedTest(name = "{0} mm is shown as {1}, {2}, {3}")
    @CsvSource({
        "0.05, 0.05 mm, 0.002 in, 2 thou",
        "0.0508, 0.051 mm, 0.002 in, 2 thou",
        "-0.05, −0.05 mm, −0.002 in, −2 thou",
        "1.2, 1.20 mm, 0.0472 in, 47.2 thou",
        "0, 0.00 mm, 0.000 in, 0 thou",
        "-0.0004, 0.00 mm, 0.000 in, 0 thou",
        "-0.0005, −0.001 mm, 0.000 in, 0 thou",
    })
    void a_length_has_the_decimals_that_fits_are_read_to(BigDecimal millimetres, String mm, String in, String thou) {
        Length length = Length.ofMillimetres(millimetres);
        assertThat(metric.length(length)).isEqualTo(mm);
        assertThat(imperial.length(length)).isEqualTo(in);
        assertThat(metric.length(length, LengthUnit.THOU)).isEqualTo(thou);
    }

    @Test
    void every_figure_carries_its_unit() {
        assertThat(metric.length(new Length(61_400), LengthUnit.MICROMETRE)).isEqualTo("61 µm");
        assertThat(metric.pressure(new Pressure(410_000))).isEqualTo("4.1 bar");
        assertThat(metric.pressure(new Pressure(3_400_000))).isEqualTo("34.0 bar");
        assertThat(imperial.pressure(new Pressure(344_738))).isEqualTo("50 psi");
        assertThat(metric.pressure(new Pressure(340_000), PressureUnit.KILOPASCAL))
                .isEqualTo("340 kPa");
        assertThat(metric.temperature(Temperature.ofCelsius(new BigDecimal("96"))))
                .isEqualTo("96 °C");
        assertThat(metric.temperature(Temperature.ofCelsius(new BigDecimal("-3.5"))))
                .isEqualTo("−3.5 °C");
        assertThat(imperial.temperature(new Temperature(369_261))).isEqualTo("205 °F");
        assertThat(metric.temperature(new Temperature(369_261), TemperatureUnit.FAHRENHEIT))
                .isEqualTo("205 °F");
        assertThat(metric.volume(Volume.ofLitres(new BigDecimal("0.3")))).isEqualTo("0.3 L");
        assertThat(metric.volume(Volume.ofLitres(new BigDecimal("0.25")))).isEqualTo("0.25 L");
        assertThat(imperial.volume(new Volume(946_353))).isEqualTo("1.0 qt");
        assertThat(metric.distance(new Distance(39_800))).isEqualTo("39.8 km");
        assertThat(imperial.distance(new Distance(1_609_344))).isEqualTo("1\u2009000.0 mi");
    }

    @Test
    void a_day_is_shown_with_its_weekday() {
        assertThat(metric.date(LocalDate.of(2026, 12, 5))).isEqualTo("Sat 5 Dec 2026");
        assertThat(metric.date(LocalDate.of(2026, 9, 12))).isEqualTo("Sat 12 Sep 2026");
        assertThat(metric.shortDate(LocalDate.of(2026, 7, 5))).isEqualTo("5 Jul");
        assertThat(metric.time(LocalTime.of(9, 5, 59))).isEqualTo("09:05");
        assertThat(metric.time(LocalTime.of(10, 10))).isEqualTo("10:10");
        assertThat(metric.weekday(LocalDate.of(2026, 7, 5))).isEqualTo("Sun");
    }

    @Test
    void a_moment_shows_what_the_clocks_showed_there() {
        Moment moment = Moment.of(LocalDateTime.of(2026, 7, 5, 15, 0), LONDON);
        assertThat(metric.moment(moment)).isEqualTo("Sun 5 Jul, 15:00");
        assertThat(metric.fullMoment(moment)).isEqualTo("Sun 5 Jul 2026, 15:00");
        Moment tokyo = Moment.of(moment.instant(), ZoneId.of("Asia/Tokyo"));
        assertThat(metric.moment(tokyo)).isEqualTo("Sun 5 Jul, 23:00");
    }

    @Test
    void a_moment_of_which_only_the_day_is_known_shows_no_time() {
        Moment day = Moment.endOf(LocalDate.of(2026, 7, 5), LONDON);
        assertThat(metric.moment(day)).isEqualTo("Sun 5 Jul");
        assertThat(metric.fullMoment(day)).isEqualTo("Sun 5 Jul 2026");
    }

    @Test
    void several_are_named_in_a_row() {
        assertThat(metric.all(List.of())).isEqualTo("none");
        assertThat(metric.all(List.of("a"))).isEqualTo("a");
        assertThat(metric.all(List.of("a", "b"))).isEqualTo("a and b");
        assertThat(metric.all(List.of("a", "b", "c"))).isEqualTo("a, b and c");
        assertThat(metric.any(List.of("1h20", "80 min"))).isEqualTo("1h20 or 80 min");
        assertThat(metric.atLeast("3.2 h")).isEqualTo("at least 3.2 h");
        assertThat(metric.about("9 h")).isEqualTo("about 9 h");
    }

    @Test
    void every_unit_has_its_sign() {
        for (Units units : List.of(Units.METRIC, Units.IMPERIAL)) {
            assertThat(Units.parse(units.text())).isEqualTo(units);
        }
        assertThat(metric.sign(LengthUnit.MILLIMETRE)).isEqualTo("mm");
        for (LengthUnit unit : LengthUnit.values()) {
            assertThat(unit.words()).contains(metric.sign(unit).toLowerCase(Locale.ROOT));
        }
        for (var unit : PressureUnit.values()) {
            assertThat(unit.words()).contains(metric.sign(unit).toLowerCase(Locale.ROOT));
        }
        for (var unit : TemperatureUnit.values()) {
            assertThat(unit.words()).contains(metric.sign(unit).toLowerCase(Locale.ROOT));
        }
        for (var unit : witnessmark.quantity.typed.VolumeUnit.values()) {
            assertThat(unit.words()).contains(metric.sign(unit).toLowerCase(Locale.ROOT));
        }
        for (var unit : witnessmark.quantity.typed.DistanceUnit.values()) {
            assertThat(unit.words()).contains(metric.sign(unit).toLowerCase(Locale.ROOT));
        }
    }

    @ParameterizedTest(name = "what is shown can be typed again, seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void what_is_shown_can_be_typed_again(long seed) {
        Random random = new Random(seed);
        LocalDate today = LocalDate.of(2026, 7, 8);
        for (int i = 0; i < 2000; i++) {
            RunningTime time = new RunningTime(1000L * random.nextInt(20 * 3600));
            assertThat(TypedTime.read(metric.running(time)).only()).contains(time);
            EngineSpeed speed = new EngineSpeed(random.nextInt(20_000));
            assertThat(TypedFigure.engineSpeed(metric.speed(speed)).only()).contains(speed);
            Length length = new Length(1000L * (random.nextInt(4_000_000) - 2_000_000));
            assertThat(TypedFigure.<Length, LengthUnit>read(metric.length(length), LengthUnit.INCH)
                            .only())
                    .contains(length);
            LocalDate day = today.minusDays(random.nextInt(9000));
            assertThat(TypedDate.read(metric.date(day), today, DayOrder.DAY_FIRST)
                            .only())
                    .contains(day);
            LocalDate lately = today.minusDays(random.nextInt(334)); // what comes within a month is that day
            assertThat(TypedDate.read(metric.shortDate(lately), today, DayOrder.DAY_FIRST)
                            .only())
                    .contains(lately);
        }
    }
}
