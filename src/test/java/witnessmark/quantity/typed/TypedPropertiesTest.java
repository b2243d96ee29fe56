package witnessmark.quantity.typed;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.RunningTime;

/** Round trips and random texts; the oracle is the value the text was made from, or a second way to read it. */
class TypedPropertiesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 7, 8);
    private static final int TRIES = 3000;
    private static final List<Function<String, Typed<?>>> READERS = List.of(
            TypedTime::read,
            text -> TypedTime.read(text, TimeUnit.HOUR),
            text -> TypedFigure.read(text, LengthUnit.MILLIMETRE),
            text -> TypedFigure.read(text, PressureUnit.BAR),
            text -> TypedFigure.read(text, TemperatureUnit.CELSIUS),
            text -> TypedFigure.read(text, VolumeUnit.LITRE),
            text -> TypedFigure.read(text, DistanceUnit.KILOMETRE),
            TypedFigure::engineSpeed,
            TypedFigure::count,
            text -> TypedDate.read(text, TODAY, DayOrder.DAY_FIRST),
            text -> TypedDate.readAhead(text, TODAY, DayOrder.MONTH_FIRST),
            TypedClock::read);

    @ParameterizedTest(name = "a running time written in any form reads back, seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void a_running_time_written_in_any_form_reads_back(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            long s = random.nextInt(20 * 3600);
            RunningTime time = new RunningTime(s * 1000);
            long h = s / 3600;
            long m = s / 60 % 60;
            assertThat(List.of(
                            h + "h" + m + "m" + s % 60,
                            h + " h " + m + " min " + s % 60 + " s",
                            String.format("%d:%02d:%02d", h, m, s % 60),
                            s + " s",
                            s / 60 + "'" + s % 60 + "\""))
                    .allSatisfy(text -> assertThat(TypedTime.read(text).only()).contains(time));
        }
    }

    @ParameterizedTest(name = "a length written with point, comma, spaces or minus reads back, seed {0}")
    @ValueSource(longs = {4, 5, 6})
    void a_length_written_in_any_form_reads_back(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            Length length = new Length(random.nextLong() % 10_000_000_000_000L);
            String text = length.text();
            assertThat(List.of(
                            text,
                            text.replace('.', ','),
                            text.replace('-', '\u2212') + " mm",
                            spaced(text),
                            spaced(text).replace('.', ',') + "\u202Fmm"))
                    .allSatisfy(each -> assertThat(TypedFigure.<Length, LengthUnit>read(each, LengthUnit.MILLIMETRE)
                                    .only())
                            .contains(length));
        }
    }

    @ParameterizedTest(name = "a figure shown in a unit reads back to the shown digits, seed {0}")
    @ValueSource(longs = {7, 8})
    void a_figure_shown_in_any_unit_reads_back(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            shownAndRead(LengthUnit.values()[random.nextInt(4)], random);
            shownAndRead(PressureUnit.values()[random.nextInt(3)], random);
            shownAndRead(TemperatureUnit.values()[random.nextInt(2)], random);
            shownAndRead(VolumeUnit.values()[random.nextInt(3)], random);
            shownAndRead(DistanceUnit.values()[random.nextInt(3)], random);
        }
    }

    /** Decimals a figure of the unit can be held to without loss, so that showing gives back what was typed. */
    private static <Q, U extends Enum<U> & Unit<Q>> void shownAndRead(U unit, Random random) {
        BigDecimal figure = BigDecimal.valueOf(random.nextInt(100_000));
        int decimals = unit instanceof DistanceUnit ? 0 : unit == LengthUnit.MICROMETRE ? 3 : 2;
        BigDecimal typed = unit == DistanceUnit.METRE ? figure : figure.movePointLeft(decimals);
        Q read = TypedFigure.<Q, U>read(typed.toPlainString(), unit).only().orElseThrow();
        assertThat(unit.in(read, decimals)).isEqualByComparingTo(typed);
    }

    @ParameterizedTest(name = "dates and times of day read back, seed {0}")
    @ValueSource(longs = {9, 10})
    void dates_and_times_of_day_read_back(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            LocalDate day = TODAY.minusDays(random.nextInt(20_000));
            String inWords = day.getDayOfMonth() + " " + day.getMonth() + " " + day.getYear();
            String figures = day.getDayOfMonth() + "/" + day.getMonthValue() + "/" + day.getYear();
            assertThat(List.of(day.toString(), inWords, day.getDayOfWeek() + " " + inWords, figures))
                    .allSatisfy(text -> assertThat(TypedDate.read(text, TODAY, DayOrder.DAY_FIRST)
                                    .only())
                            .contains(day));
            LocalTime time = LocalTime.of(random.nextInt(24), random.nextInt(60));
            assertThat(List.of(
                            time.toString(),
                            time.toString().replace(":", ""),
                            time.toString().replace(':', 'h')))
                    .allSatisfy(text -> assertThat(TypedClock.read(text).only()).contains(time));
        }
    }

    @ParameterizedTest(
            name =
                    "a day without its year is the last up to today unless it comes within a month, or the first from it, seed {0}")
    @ValueSource(longs = {11})
    void a_day_without_its_year_is_the_nearest_on_the_side_wanted(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            LocalDate today = TODAY.plusDays(random.nextInt(3000));
            LocalDate past = today.minusDays(random.nextInt(334));
            LocalDate soon = today.plusDays(1 + random.nextInt(28));
            LocalDate ahead = today.plusDays(random.nextInt(365));
            assertThat(TypedDate.read(past.getDayOfMonth() + "/" + past.getMonthValue(), today, DayOrder.DAY_FIRST)
                            .only())
                    .contains(past);
            assertThat(TypedDate.read(soon.getDayOfMonth() + "/" + soon.getMonthValue(), today, DayOrder.DAY_FIRST)
                            .only())
                    .contains(soon);
            assertThat(TypedDate.readAhead(
                                    ahead.getMonthValue() + "." + ahead.getDayOfMonth(), today, DayOrder.MONTH_FIRST)
                            .only())
                    .contains(ahead);
        }
    }

    @ParameterizedTest(name = "random texts never throw and rubbish after a text is never overlooked, seed {0}")
    @ValueSource(longs = {12, 13, 14, 15})
    void random_texts_never_throw_and_rubbish_is_never_overlooked(long seed) {
        Random random = new Random(seed);
        String likely = "0123456789 .,:-+−'\"/hmsinbarpkqtloucdeF°C\u00A0\u2009\u202Fµ";
        String rubbish = "xz§?;()\u0000ß٣½";
        for (int i = 0; i < 20 * TRIES; i++) {
            String text = random.nextInt(4) == 0 ? anything(random) : drawn(likely, 1 + random.nextInt(8), random);
            Function<String, Typed<?>> reader = READERS.get(random.nextInt(READERS.size()));
            Typed<?> typed = reader.apply(text);
            if (!(typed instanceof Typed.Unreadable)) {
                String more = text + rubbish.charAt(random.nextInt(rubbish.length()));
                assertThat(reader.apply(more)).as(more).isInstanceOf(Typed.Unreadable.class);
            }
        }
    }

    @ParameterizedTest(name = "a figure read agrees with the library's reading of its bare digits, seed {0}")
    @ValueSource(longs = {16, 17})
    void a_figure_read_agrees_with_a_second_way_to_read_it(long seed) {
        Random random = new Random(seed);
        int read = 0;
        for (int i = 0; i < 20 * TRIES; i++) {
            String text = drawn("0123456789012 .,-", 1 + random.nextInt(7), random);
            Typed<Length> typed = TypedFigure.read(text, LengthUnit.MICROMETRE);
            if (typed instanceof Typed.Read<Length> figure) {
                read++;
                BigDecimal bare = new BigDecimal(text.replace(" ", "").replace(',', '.'));
                assertThat(figure.value().nanometres())
                        .as(text)
                        .isEqualTo(bare.movePointRight(3)
                                .setScale(0, RoundingMode.HALF_UP)
                                .longValueExact());
            }
        }
        assertThat(read).isGreaterThan(1000);
    }

    @ParameterizedTest(name = "a speed shown with thousands set apart reads back, seed {0}")
    @ValueSource(longs = {18})
    void a_speed_shown_with_thousands_set_apart_reads_back(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            EngineSpeed speed = new EngineSpeed(random.nextInt(30_000));
            for (char apart : " .,\u2009".toCharArray()) {
                String text = spaced(speed.text()).replace('\u2009', apart);
                assertThat(TypedFigure.engineSpeed(text).only()).contains(speed);
            }
        }
    }

    private static String spaced(String plain) {
        int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
        StringBuilder spaced = new StringBuilder(plain);
        for (int at = point - 3; at > (plain.startsWith("-") ? 1 : 0); at -= 3) {
            spaced.insert(at, '\u2009');
        }
        return spaced.toString();
    }

    private static String drawn(String letters, int length, Random random) {
        StringBuilder drawn = new StringBuilder();
        for (int i = 0; i < length; i++) {
            drawn.append(letters.charAt(random.nextInt(letters.length())));
        }
        return drawn.toString();
    }

    private static String anything(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(80); i > 0; i--) {
            text.append((char) random.nextInt(0x10000));
        }
        return text.toString();
    }
}
