package witnessmark.trace.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.domain.Coded;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Recognised;
import witnessmark.trace.result.TimeBase;

/** Headings, units and lines before the figures. Headings: common practice, no source. */
class RecognitionTest {
    private static Recognised of(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return Recognition.of(bytes, bytes.length, true).orThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "RPM,engine speed",
        "n_mot,engine speed",
        "EngineSpeed,engine speed",
        "Motordrehzahl,engine speed",
        "r\u00e9gime moteur,engine speed",
        "ECU Throttle Pos,throttle",
        "TPS,throttle",
        "\u00d6ltemperatur,oil temperature",
        "Temp. huile,oil temperature",
        "Pression d'huile,oil pressure",
        "OilPress,oil pressure",
        "ECT,water temperature",
        "K\u00fchlwassertemperatur,water temperature",
        "EGT 3,exhaust temperature 3",
        "Exhaust Temp Cyl 4,exhaust temperature 4",
        "EGT2,exhaust temperature 2",
        "GPS Speed,car speed",
        "Velocit\u00e0,car speed",
        "Lat Accel,lateral acceleration",
        "Batt Volts,battery",
        "Beacon,lap",
        "Crankcase vacuum,crankcase pressure",
        "Seat heater,other"
    })
    void headings_are_known(String heading, String kind) {
        assertThat(of("Time," + heading + "\n0.0,1\n0.1,2\n0.2,3\n")
                        .form()
                        .columns()
                        .get(1)
                        .kind())
                .isEqualTo(Coded.of(ChannelKind.class, kind));
    }

    @ParameterizedTest
    @CsvSource({
        "Oil Press [psi],oil pressure,psi",
        "Oil Press (kPa),oil pressure,kPa",
        "oil_pressure_bar,oil pressure,bar",
        "Speed / mph,car speed,mph",
        "Water Temp [\u00b0F],water temperature,\u00b0F",
        "Oil Temp [degC],oil temperature,\u00b0C",
        "Drehzahl [1/min],engine speed,rpm",
        "RPM [rpm/10],engine speed,10 rpm",
        "Speed [rpm],engine speed,rpm",
        "Lat G (m/s\u00b2),lateral acceleration,m/s2",
        "Oil Press [V],other,V"
    })
    void units_beside_headings_are_known(String heading, String kind, String unit) {
        ColumnForm column = of("Time," + heading + "\n0.0,1\n0.1,2\n0.2,3\n")
                .form()
                .columns()
                .get(1);
        assertThat(column.kind()).isEqualTo(Coded.of(ChannelKind.class, kind));
        assertThat(column.unit()).isEqualTo(Coded.of(ChannelUnit.class, unit));
        assertThat(column.stated()).isTrue();
    }

    @Test
    void lines_before_the_headings_are_names_and_values() {
        Recognised found = of("Track;Dunmarrow\nDate;03.05.2026\nTime;14:05:00\nSample rate;20 Hz\n\n"
                + "Engine Speed;Throttle\nrpm;%\n6000;50\n6100;60\n");
        assertThat(found.said()).containsEntry("Track", "Dunmarrow").containsEntry("Sample rate", "20 Hz");
        assertThat(found.form().time()).isEqualTo(TimeBase.at(20));
        assertThat(found.begins()).isEqualTo(LocalDateTime.of(2026, 5, 3, 14, 5));
        assertThat(found.form().before()).isEqualTo(7);
        assertThat(found.questions()).isEmpty();
    }

    /** Values with marks of their own; a table's own delimiter goes before others. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '!',
            value = {
                "Time;09:00:00 ! , ! Time ! 09:00:00",
                "Comment;wet, then dry ! , ! Comment ! wet, then dry",
                "Sample rate;12,5 Hz ! , ! Sample rate ! 12,5 Hz",
                "Start: 09:00, by hand ! , ! Start ! 09:00",
                "Venue: Old Park, north ! ; ! Venue ! Old Park, north",
                "Start time, hh:mm;12:00 ! ; ! Start time, hhmm ! 12:00",
                "\"Vehicle\";\"57\" ! , ! Vehicle ! 57",
                "\"Vehicle: 57\" ! , ! Vehicle ! 57",
                "\"Car; engine\",\"57; K05\" ! , ! Car; engine ! 57; K05",
                "Car 57 ! ' ' ! Car ! 57",
                "Date: 2026-05-03 14:05 ! ' ' ! Date ! 2026-05-03 14:05"
            })
    void a_line_above_the_headings_is_a_name_and_a_value(String line, char delimiter, String name, String value) {
        assertThat(HeadLine.of(line, delimiter)).contains(new HeadLine(name, value));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Logger", "Car;", "Car: ;;", ";57", ": 57", ",,,", "\"", "===", "Dunmarrow"})
    void a_line_without_name_or_value_says_nothing(String line) {
        for (char delimiter : new char[] {',', ';', '\t', '|', 0}) {
            assertThat(HeadLine.of(line, delimiter)).as("%s", delimiter).isEmpty();
        }
    }

    @Test
    void units_turn_into_each_other_by_their_definitions() {
        // 1 psi = 6894.757 Pa, 212 °F = 100 °C, 273.15 K = 0 °C, 1 mile = 1609.344 m (exact definitions).
        assertThat(ChannelUnit.PSI.to(ChannelUnit.BAR, 100)).isCloseTo(6.894757293168361, within(1e-12));
        assertThat(ChannelUnit.FAHRENHEIT.to(ChannelUnit.CELSIUS, 212)).isCloseTo(100, within(1e-12));
        assertThat(ChannelUnit.KELVIN.to(ChannelUnit.CELSIUS, 273.15)).isZero();
        assertThat(ChannelUnit.MILE_PER_HOUR.to(ChannelUnit.KILOMETRE_PER_HOUR, 100))
                .isEqualTo(160.9344);
        assertThat(ChannelUnit.BAR.to(ChannelUnit.KILOPASCAL, -0.2)).isCloseTo(-20, within(1e-12));
        assertThat(ChannelUnit.METRIC_HORSEPOWER.to(ChannelUnit.KILOWATT, 1)).isEqualTo(0.73549875);
    }
}
