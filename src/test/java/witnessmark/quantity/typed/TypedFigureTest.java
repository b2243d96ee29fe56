package witnessmark.quantity.typed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;

class TypedFigureTest {
    /** Nanometres by hand: an inch is 25.4 mm exactly (NIST SP 811, appendix B.8), a thou a thousandth of it. */
    @ParameterizedTest(name = "{0} in a field of mm is {1} nm")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "0.002 in | 50800",
                "0.002\" | 50800",
                "0.002″ | 50800",
                "2 thou | 50800",
                "0.1 thou | 2540",
                "50 um | 50000",
                "50 µm | 50000",
                "50μm | 50000",
                "0,05 | 50000",
                ",05 | 50000",
                "1.5 | 1500000",
                "-0.05 | -50000",
                "−0,05 mm | -50000",
                "- 0.05 | -50000",
                "+0.2 | 200000",
                "1,234 | 1234000",
                "1.234 | 1234000",
                "1 234,5 MM | 1234500000",
                "9 150 | 9150000000",
                "0.0000005 | 1",
                "0.0000004 | 0",
                "-0.0000005 | -1",
            })
    void a_length_is_read_with_or_without_its_unit(String text, long nanometres) {
        assertThat(TypedFigure.read(text, LengthUnit.MILLIMETRE))
                .isEqualTo(new Typed.Read<>(new Length(nanometres), text));
    }

    @Test
    void a_bare_figure_is_in_the_unit_of_its_field() {
        assertThat(TypedFigure.<Length, LengthUnit>read("2", LengthUnit.THOU).only())
                .contains(new Length(50_800));
        assertThat(TypedFigure.<Temperature, TemperatureUnit>read("32", TemperatureUnit.FAHRENHEIT)
                        .only())
                .contains(new Temperature(273_150));
    }

    /** The published factor 6.894 757 kPa a psi (NIST SP 811, appendix B.8), to the digits it has. */
    @ParameterizedTest(name = "{0} is {1} Pa")
    @CsvSource({
        "3.4, 340000",
        "3.4 bar, 340000",
        "340 kPa, 340000",
        "50 psi, 344738",
        "1 psi, 6895",
        "1000 PSI, 6894757"
    })
    void a_pressure_is_read_in_bar_kilopascal_or_psi(String text, long pascals) {
        assertThat(TypedFigure.read(text, PressureUnit.BAR)).isEqualTo(new Typed.Read<>(new Pressure(pascals), text));
    }

    /** Fixed points of the scales: ice 0 °C = 32 °F, steam 100 °C = 212 °F, equal at -40; 0 K = -459.67 °F. */
    @ParameterizedTest(name = "{0} is {1} mK")
    @CsvSource({
        "0, 273150",
        "32F, 273150",
        "100 °C, 373150",
        "212 °F, 373150",
        "-40 C, 233150",
        "-40 F, 233150",
        "205F, 369261",
        "-459.67 F, 0",
        "-273.15, 0",
    })
    void a_temperature_is_read_in_celsius_or_fahrenheit(String text, long millikelvin) {
        assertThat(TypedFigure.read(text, TemperatureUnit.CELSIUS))
                .isEqualTo(new Typed.Read<>(new Temperature(millikelvin), text));
    }

    /** A US liquid quart is 9.463 529 E-04 m³ (NIST SP 811, appendix B.8). */
    @ParameterizedTest(name = "{0} is {1} microlitres")
    @CsvSource({"0.3, 300000", "0.3 L, 300000", "300 ml, 300000", "300cc, 300000", "1 qt, 946353", "1000 qt, 946352946"
    })
    void a_volume_is_read_in_litres_millilitres_or_quarts(String text, long microlitres) {
        assertThat(TypedFigure.read(text, VolumeUnit.LITRE)).isEqualTo(new Typed.Read<>(new Volume(microlitres), text));
    }

    /** A mile is 1 609.344 m (NIST SP 811, appendix B.8). */
    @ParameterizedTest(name = "{0} is {1} m")
    @CsvSource({"39.8, 39800", "39.8 km, 39800", "1 mi, 1609", "1000 miles, 1609344", "3 980 m, 3980"})
    void a_distance_is_read_in_kilometres_miles_or_metres(String text, long metres) {
        assertThat(TypedFigure.read(text, DistanceUnit.KILOMETRE))
                .isEqualTo(new Typed.Read<>(new Distance(metres), text));
    }

    @ParameterizedTest(name = "\"{0}\" is not read as a pressure")
    @ValueSource(
            strings = {
                "",
                " ",
                "12abc",
                "abc",
                "bar",
                "1,234.5",
                "1.234,5",
                "1,234,567",
                "1..5",
                "5.",
                "5,",
                "--5",
                "+-5",
                "1 5",
                "9 1500",
                "12 34 bar",
                "3.4 bar x",
                "3.4 bar bar",
                "3.4 mm",
                "1e5",
                "Infinity",
                "0x1F",
                "½",
                "٣",
                "3.4\u0000",
                "99999999999999999999 bar",
            })
    void the_whole_text_must_be_a_figure_with_a_unit_of_its_kind(String text) {
        assertThat(TypedFigure.read(text, PressureUnit.BAR)).isInstanceOf(Typed.Unreadable.class);
    }

    @Test
    void what_is_not_read_comes_with_an_example_in_the_fields_unit_and_one_in_another() {
        assertThat(TypedFigure.<Pressure, PressureUnit>read("x", PressureUnit.PSI))
                .isEqualTo(new Typed.Unreadable<>(java.util.List.of("50 psi", "3.4 bar")));
        assertThat(TypedFigure.<Length, LengthUnit>read("x", LengthUnit.MILLIMETRE))
                .isInstanceOfSatisfying(
                        Typed.Unreadable.class,
                        unreadable -> assertThat(unreadable.example()).isEqualTo("0.05 mm"));
        assertThatThrownBy(() -> new Typed.Unreadable<>(java.util.List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_text_longer_than_any_measure_is_not_read() {
        assertThat(TypedFigure.count("0".repeat(58) + "12").only()).contains(12);
        assertThat(TypedFigure.count("0".repeat(59) + "12").only()).isEmpty();
    }

    @Test
    void what_the_quantity_cannot_be_is_not_read() {
        assertThat(TypedFigure.read("-1", DistanceUnit.KILOMETRE)).isInstanceOf(Typed.Unreadable.class);
        assertThat(TypedFigure.read("-0.1 L", VolumeUnit.LITRE)).isInstanceOf(Typed.Unreadable.class);
        assertThat(TypedFigure.read("-274", TemperatureUnit.CELSIUS)).isInstanceOf(Typed.Unreadable.class);
    }

    @ParameterizedTest(name = "{0} is {1} rpm")
    @CsvSource(
            delimiter = '|',
            value = {
                "9150 | 9150",
                "9 150 | 9150",
                "9 150 rpm | 9150",
                "9,150 | 9150",
                "9.150 rpm | 9150",
                "9000/min | -1",
                "9000 1/min | 9000",
                "9150RPM | 9150",
                "0 | 0",
                "9.15 | -1",
                "9150.0 | -1",
                "-9150 | -1",
                "0,150 | -1",
                "9,15,0 | -1",
                "1,234.567 | -1",
                "9 1500 | -1",
                "9150 bar | -1",
                "rpm | -1",
                "2147483647 | 2147483647",
                "2147483648 | -1",
            })
    void an_engine_speed_is_a_whole_number_whose_thousands_may_be_set_apart(String text, int rpm) {
        Typed<EngineSpeed> typed = TypedFigure.engineSpeed(text);
        if (rpm < 0) {
            assertThat(typed).isInstanceOf(Typed.Unreadable.class);
        } else {
            assertThat(typed).isEqualTo(new Typed.Read<>(new EngineSpeed(rpm), text));
        }
    }

    @Test
    void spaces_of_every_kind_set_thousands_apart() {
        for (String space : new String[] {" ", "\u00A0", "\u2009", "\u202F"}) {
            assertThat(TypedFigure.engineSpeed("9" + space + "150" + space + "rpm")
                            .only())
                    .contains(new EngineSpeed(9150));
            assertThat(TypedFigure.count("9" + space + "150").only()).contains(9150);
        }
    }

    @Test
    void a_count_is_a_whole_number_from_none_up() {
        assertThat(TypedFigure.count("22").only()).contains(22);
        assertThat(TypedFigure.count("0").only()).contains(0);
        for (String text : new String[] {"", "-1", "2.5", "12abc", "1 laps", "99999999999"}) {
            assertThat(TypedFigure.count(text)).as(text).isInstanceOf(Typed.Unreadable.class);
        }
    }

    @ParameterizedTest(name = "{0}: every word and the example can be read")
    @EnumSource(PressureUnit.class)
    void every_word_of_a_pressure_can_be_read(PressureUnit unit) {
        readsItsWords(unit, PressureUnit.BAR);
    }

    @ParameterizedTest(name = "{0}: every word and the example can be read")
    @EnumSource(LengthUnit.class)
    void every_word_of_a_length_can_be_read(LengthUnit unit) {
        readsItsWords(unit, LengthUnit.MILLIMETRE);
    }

    @ParameterizedTest(name = "{0}: every word and the example can be read")
    @EnumSource(TemperatureUnit.class)
    void every_word_of_a_temperature_can_be_read(TemperatureUnit unit) {
        readsItsWords(unit, TemperatureUnit.CELSIUS);
    }

    @ParameterizedTest(name = "{0}: every word and the example can be read")
    @EnumSource(VolumeUnit.class)
    void every_word_of_a_volume_can_be_read(VolumeUnit unit) {
        readsItsWords(unit, VolumeUnit.LITRE);
    }

    @ParameterizedTest(name = "{0}: every word and the example can be read")
    @EnumSource(DistanceUnit.class)
    void every_word_of_a_distance_can_be_read(DistanceUnit unit) {
        readsItsWords(unit, DistanceUnit.KILOMETRE);
    }

    private static <Q, U extends Enum<U> & Unit<Q>> void readsItsWords(U unit, U own) {
        for (String word : unit.words()) {
            String text = "7 " + word;
            assertThat(TypedFigure.read(text, own))
                    .isEqualTo(new Typed.Read<>(unit.of(new java.math.BigDecimal(7)), text));
        }
        assertThat(TypedFigure.read(unit.example(), own)).isInstanceOf(Typed.Read.class);
    }
}
