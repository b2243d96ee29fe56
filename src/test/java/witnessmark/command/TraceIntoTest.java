package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.logbook.Desk;
import witnessmark.sample.SampleBooks;
import witnessmark.trace.LoggerFiles;
import witnessmark.trace.Packs;

/** A trace brought into a logbook from the command line. The files of the invented season. */
class TraceIntoTest {
    @TempDir
    private Path folder;

    private Shell shell;
    private String book;

    @BeforeEach
    void open() {
        shell = new Shell(folder);
        Desk desk = new SampleBooks(folder.resolve("books")).untraced();
        book = desk.logbook().path().toString();
        desk.logbook().close();
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void the_run_its_name_leads_to_becomes_measured_and_the_same_file_is_refused() throws IOException {
        String race = file("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Shell.Ran ran = shell.run("trace", race, "--logbook", book);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("for Race 1", "3 May", "car 41", "highest", "over_revs");

        Shell.Ran again = shell.run(
                "trace",
                file("copy.csv", LoggerFiles.mechanicalOverRev()),
                "--logbook",
                book,
                "--run",
                "2026-05-03 Race 1");
        assertThat(again.code()).isEqualTo(1);
        assertThat(again.err()).contains("The same samples are in the logbook already", "2026-05-03_41_race1.csv");
        assertThat(shell.run("verify", book).code()).isZero();
    }

    @Test
    void what_is_taken_is_said_and_json_names_it() throws IOException {
        String race = file("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Shell.Ran ran = shell.run(
                "trace",
                race,
                "--logbook",
                book,
                "--run",
                "2026-05-03 41 Race 1",
                "--take",
                "highest,water,start",
                "--leave",
                "water",
                "--no-samples",
                "--json");
        JsonNode answer = new ObjectMapper().readTree(ran.out());
        assertThat(ran.code()).isZero();
        assertThat(answer.get("worked").asBoolean()).isTrue();
        assertThat(answer.get("name").asText()).isEqualTo("Race 1");
        assertThat(answer.get("samplesKept").asBoolean()).isFalse();
        assertThat(answer.get("taken")).extracting(JsonNode::asText).containsExactly("start", "highest");
    }

    @Test
    void of_a_packed_file_cut_short_what_there_is_comes_in_and_it_is_told() throws IOException {
        byte[] bytes = Packs.gzip(LoggerFiles.mechanicalOverRev());
        Path cut = Files.write(
                folder.resolve("2026-05-03_41_race1.csv.gz"), java.util.Arrays.copyOf(bytes, bytes.length / 2));
        Shell.Ran ran = shell.run("trace", cut.toString(), "--logbook", book, "--json");
        JsonNode answer = new ObjectMapper().readTree(ran.out());
        assertThat(ran.code()).as("worked except for what is told").isEqualTo(3);
        assertThat(answer.get("worked").asBoolean()).isTrue();
        assertThat(answer.get("found")).hasSize(1);
        assertThat(answer.get("found").get(0).get("kind").asText()).isEqualTo("TRACE_CUT_SHORT");
        assertThat(answer.get("taken"))
                .extracting(JsonNode::asText)
                .as("the run says more of all the others")
                .containsExactly("start");
        assertThat(shell.run("verify", book).code()).isZero();
    }

    @Test
    void a_run_that_is_not_sure_is_asked_and_one_that_is_not_there_refused() throws IOException {
        String odd = file("session.csv", LoggerFiles.spike().replace("# Car,57\n", "")); // two cars were out then
        Shell.Ran asked = shell.run("trace", odd, "--logbook", book);
        assertThat(asked.code()).isEqualTo(1);
        assertThat(asked.err()).contains("cannot be told for sure", "--run");
        assertThat(shell.run("trace", odd, "--logbook", book, "--run", "Race 99")
                        .err())
                .contains("Race 99");
        assertThat(shell.run("trace", odd, "--run", "Race 1").code()).isEqualTo(2);
        assertThat(shell.run("trace", odd, "--logbook", book, "--part", "2").code())
                .isEqualTo(2);
        assertThat(shell.run("trace", odd, "--logbook", book, "--run", "2026-05-03 Race 1"))
                .as("two cars were out then, and nothing speaks for one of them")
                .returns(1, Shell.Ran::code)
                .satisfies(ran ->
                        assertThat(ran.err()).contains("2026-05-03 11:00 57 Race 1 or 2026-05-03 11:00 41 Race 1"));
        assertThat(shell.run("trace", odd, "--logbook", book, "--run", "2026-05-03 11:00 41 Race 1", "--take", "speed")
                        .err())
                .contains("'speed' is not understood in --take", "oil_pressure");
    }

    /** Its run has a trace by then, and another car was out at the same time: nobody is there to be asked. */
    @Test
    void a_second_trace_of_a_run_is_asked_about_and_goes_to_no_other_car() throws IOException {
        String text = LoggerFiles.mechanicalOverRev();
        JsonNode first = new ObjectMapper()
                .readTree(shell.run("trace", file("2026-05-03_41_race1.csv", text), "--logbook", book, "--json")
                        .out());
        assertThat(first.get("car").asText()).isEqualTo("41");
        assertThat(first.get("engine").asText()).isEqualTo("K03");
        String cut = file("2026-05-03_41_race1_cut.csv", text.substring(0, text.length() - 3));
        Shell.Ran asked = shell.run("trace", cut, "--logbook", book);
        assertThat(asked.code()).isEqualTo(1);
        assertThat(asked.err()).contains("cannot be told for sure", "2026-05-03 11:00 41 Race 1");
        Shell.Ran other = shell.run("trace", cut, "--logbook", book, "--run", "2026-05-03 57 Race 1");
        assertThat(other.err()).contains("is of car 41 by its name or its first lines, and this run is car 57's");
    }

    @Test
    void a_wrong_time_base_is_refused_and_put_right_by_an_answer() throws IOException {
        String race = file("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        Shell.Ran refused = shell.run("trace", race, "--logbook", book);
        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("times as much");
        Shell.Ran ran = shell.run("trace", race, "--logbook", book, "--rate", "20");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
    }

    @Test
    void what_is_open_is_asked_before_anything_is_written() throws IOException {
        String text = LoggerFiles.spike();
        StringBuilder without = new StringBuilder();
        text.lines()
                .forEach(line ->
                        without.append(line.substring(line.indexOf(',') + 1)).append('\n'));
        String odd = file("2026-05-23_57_p1.csv", without.toString());
        Shell.Ran asked = shell.run("trace", odd, "--logbook", book);
        assertThat(asked.code()).isEqualTo(1);
        assertThat(asked.err()).contains("Say how many samples there are a second");
        assertThat(shell.run("trace", odd, "--logbook", book, "--rate", "20").code())
                .isZero();
    }
}
