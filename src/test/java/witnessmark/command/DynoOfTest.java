package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dyno sheets from the command line, on the evening the invented season opens (its table 14.6), and of text files. */
class DynoOfTest {
    @TempDir
    private static Path folder;

    private static Shell shell = new Shell(Path.of(""));
    private static String book = "";

    @BeforeAll
    static void read() {
        shell = new Shell(folder);
        book = shell.sampleBook();
    }

    /** Thousands are set apart by a space that does not break. */
    private static String plain(String out) {
        return out.replaceAll("\\p{Zs}", " ");
    }

    private static Shell.Ran file(String text, String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("sheet.txt"), text);
        String[] args = new String[more.length + 2];
        args[0] = "dyno";
        args[1] = file.toString();
        System.arraycopy(more, 0, args, 2, more.length);
        return shell.run(args);
    }

    @Test
    void the_newest_of_an_engine_comes_first_beside_its_baseline() {
        assertThat(plain(shell.run("dyno", book, "K03").out()))
                .contains("151.6 kW at 7 800 rpm, 0.5 % under the baseline of 17 Feb: within what the dyno repeats")
                .contains("152.4 kW at 7 800 rpm: a baseline")
                .contains("SAE J1349: observed times 1.021")
                .contains("run in for 57 min in 6 steps, of 1 h 32 min running")
                .contains("alike up to 1.5 %: what a dyno usually repeats to on another day");
    }

    @Test
    void of_all_engines_each_has_its_newest() {
        String out = plain(shell.run("dyno", book).out());

        assertThat(out).contains("K03", "K05", "K06").doesNotContain("K21").doesNotContain("152.4 kW");
        assertThat(out).contains("153.7 kW at 7 750 rpm, 0.5 % over the baseline of 10 Mar");
    }

    @Test
    void an_earlier_day_knows_nothing_of_later_sheets_and_no_engine_is_said() {
        assertThat(shell.run("dyno", book, "K03", "--as-of", "2026-03-01").out())
                .contains("152.4 kW")
                .doesNotContain("151.6");
        assertThat(shell.run("dyno", book, "K22").out()).contains("No dyno sheet of K22 is written down.");
        Shell.Ran none = shell.run("dyno", book, "K99");
        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("K99");
    }

    @Test
    void the_same_as_json() throws IOException {
        JsonNode sheet = new ObjectMapper()
                .readTree(shell.run("dyno", book, "K03", "--json").out())
                .get("engines")
                .get(0)
                .get("sheets")
                .get(0);

        assertThat(sheet.get("change").get("verdict").asText()).isEqualTo("alike");
        assertThat(sheet.get("change").get("baselineOf").asText()).isEqualTo("2026-02-17");
        assertThat(sheet.get("power").get("kilowatts").asDouble()).isCloseTo(151.6, within(0.05));
        assertThat(sheet.get("mean")).hasSize(10);
        assertThat(sheet.get("pulls")).hasSize(3);
    }

    /** 98.2 kPa, 24 °C, 45 %: by J1349 (June 1990) 1.180·(99/96.857)·√(297/298) − 0.18, vapour 2.985 kPa (IAPWS R7-97). */
    @Test
    void a_text_file_is_corrected_by_itself() throws IOException {
        Shell.Ran ran = file("""
                correction = SAE J1349
                pressure = 982 hPa   # of the cell
                air = 24
                humidity = 45 %
                rpm  N·m
                6100 193.5
                7800 182.3
                """);
        double factor = 1.180 * 99 / (98.2 - 0.45 * 2.985) * Math.sqrt(297.0 / 298) - 0.18;
        double power = 182.3 * factor * 7800 * 2 * Math.PI / 60_000;

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(plain(ran.out()))
                .startsWith("%.1f kW at 7 800 rpm".formatted(power))
                .contains("SAE J1349: observed times %.3f".formatted(factor))
                .contains("observed 148.9 kW and 193.5 N·m");
    }

    /** What is printed goes on to whoever reads it: no figure by another rule than was asked for. */
    @Test
    void a_correction_that_is_not_known_corrects_nothing() throws IOException {
        Shell.Ran ran = file("correction = STD\npressure = 982\nair = 24\nhumidity = 45\n4000 171\n7800 186\n");
        assertThat(ran.err()).contains("'correction = STD', was not understood", "SAE J1349, ISO 1585, DIN 70020");
        assertThat(ran.out())
                .contains("left as observed: the correction that was asked for is not known here")
                .doesNotContain("SAE", "no correction was asked for");
        assertThat(ran.code()).isEqualTo(3);
    }

    @Test
    void what_was_asked_for_and_not_done_did_not_work_and_every_line_not_read_is_found() throws IOException {
        JsonNode unknown = new ObjectMapper()
                .readTree(file("correction = STD\nweather = fine\n4000 171\n7800 186\nhello\n", "--json")
                        .out());
        assertThat(unknown.get("worked").asBoolean()).isFalse();
        assertThat(unknown.get("found")).hasSize(3);
        assertThat(unknown.get("unread")).hasSize(3);
        assertThat(unknown.get("unread").findValuesAsText("line")).containsExactly("1", "2", "5");
        assertThat(unknown.get("unread").get(2).get("text").asText()).isEqualTo("hello");
        Shell.Ran dark = file("correction = ISO 1585\n4000 171\n7800 186\n", "--json");
        assertThat(new ObjectMapper().readTree(dark.out()).get("worked").asBoolean())
                .as("its air is not written down")
                .isFalse();
        assertThat(dark.code()).isEqualTo(3);
        assertThat(new ObjectMapper()
                        .readTree(file("correction = none\n4000 171\n7800 186\n", "--json")
                                .out())
                        .get("worked")
                        .asBoolean())
                .isTrue();
    }

    @Test
    void a_file_that_is_not_there_is_no_logbook() {
        Shell.Ran ran = shell.run("dyno", folder.resolve("nofile.txt").toString());
        assertThat(ran.err()).contains("There is nothing at").doesNotContain("logbook");
        assertThat(ran.code()).isEqualTo(1);
    }

    /** DIN 70020-6 goes by the barometer, vapour included: 101.3/98.2·√(306/293) = 1.0542 (check values, hot and humid). */
    @Test
    void of_din_the_air_it_goes_by_is_told_and_not_its_dry_part() throws IOException {
        String humid = "correction = DIN 70020\npressure = 98.2 kPa\nair = 33\n4000 171\n7800 186\n";
        assertThat(plain(file(humid + "humidity = 70 %\n").out()))
                .contains("DIN 70020: observed times 1.0542; air with its vapour 98.2 kPa")
                .doesNotContain("dry");
        JsonNode factor = new ObjectMapper()
                .readTree(file(humid, "--json").out())
                .get("sheet")
                .get("factor");
        assertThat(factor.get("dryKilopascals").isNull())
                .as("its humidity is not known")
                .isTrue();
        assertThat(factor.get("kilopascals").asDouble()).isCloseTo(98.2, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pressure = 982#air = 38#humidity = 20#4000 171#7800 186 | SAE J1349 does not correct it: the air is warmer than 35 °C | 0",
                "pressure = 84.5 kPa#air = 24#humidity = 30#4000 171#7800 186 | the dry air has less than 90 kPa | 0",
                "4000 171#7800 186 | SAE J1349 cannot be worked out: air pressure, air temperature and humidity not written down | 0",
                "correction = none#4000 171#7800 186 | left as observed: no correction was asked for | 0",
                "figures = corrected#factor = 1.03#pressure = 99 kPa dry#air = 25#4000 171#7800 186 | so check the sheet and the sensors | 0",
                "pressure = 982#air = 24#humidity = 45#4000 171#4000 172#5000 188 | line 5 has | 3",
                "4000 171#5000 10000 | between 1 and 3 000 | 3",
                "weather = fine#4000 171#5000 188 | 'weather = fine', was not understood | 3",
                "pressure = thick#4000 171#5000 188 | 'pressure = thick', was not understood | 3",
                "pressure = 982#air = 24#humidity = 0.45#4000 171 | 'humidity = 0.45', was not understood | 3",
                "correction = STD#pressure = 982#air = 24#humidity = 45#4000 171 | ISO 1585 | 3",
                "171 4000#188 5000 | No speed with its torque stands in | 1",
                "hello | No speed with its torque stands in | 1",
                "'' | No speed with its torque | 1",
            })
    void what_is_missing_refused_or_wrong_is_said(String text, String said, int code) throws IOException {
        Shell.Ran ran = file(text.replace('#', '\n'));

        assertThat(plain(ran.out() + ran.err()).toLowerCase(Locale.ROOT)).contains(said.toLowerCase(Locale.ROOT));
        assertThat(ran.code()).isEqualTo(code);
    }
}
