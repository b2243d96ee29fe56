package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.logbook.Desk;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleTraces;

/** Traces of the logbook from the command line. */
class TracesOfTest {
    @TempDir
    private static Path folder;

    private static Shell shell = new Shell(Path.of(""));
    private static String book = "";

    @BeforeAll
    static void read() {
        shell = new Shell(folder);
        Desk desk = new SampleBooks(folder).untraced();
        SampleTraces.race(desk);
        SampleTraces.test(desk);
        book = desk.logbook().path().toString();
        desk.logbook().close();
    }

    @Test
    void each_comes_with_its_marks_its_time_at_each_speed_and_what_nobody_wrote() {
        String said = shell.run("traces", book).out();
        assertThat(said)
                .contains("K03, Race 1, ")
                .contains("Marks")
                .contains("18:47.4 mechanical over-rev, 9\u2009340 rpm, 0.42 s, gear 2, throttle 0 %")
                .contains("Nobody wrote how speed wears a kind of part of this engine")
                .contains("Oil temperature: largest range ")
                .contains("Shown only: they feed no counter")
                .contains("sensor drop");
        assertThat(said.indexOf("Race 1")).isLessThan(said.indexOf("Run 3"));
    }

    @Test
    void of_a_stretch_each_channel_says_what_it_did() {
        // the file goes beyond 8 500 rpm 1 127.42 s after its first sample, and to 9 340 rpm first at 1 127.58 s
        assertThat(shell.run("traces", book, "K03", "--run", "race 1", "--from", "1127.3", "--until", "1128.5")
                        .out())
                .contains("From 18:47.3 to 18:48.5")
                .contains("most 9\u2009340 at 18:47.5")
                .doesNotContain("Run 3");
    }

    @Test
    void the_same_as_json() throws IOException {
        JsonNode trace = new ObjectMapper()
                .readTree(shell.run("traces", book, "--run", "Race 1", "--json").out())
                .get("traces")
                .get(0);
        double running = 0;
        for (JsonNode band : trace.get("speeds")) {
            running += band.asDouble();
        }
        assertThat(Math.abs(running - trace.get("running").asDouble())).isLessThan(1e-6);
        assertThat(trace.get("samplesKept").asBoolean()).isTrue();
        assertThat(trace.get("wear")).isEmpty();
        assertThat(trace.get("thermalRanges")).hasSize(2);
        assertThat(trace.get("channels").get(0).get("most").asDouble()).isEqualTo(9340);
    }

    @Test
    void an_engine_that_is_not_there_and_a_run_without_one_are_said() {
        assertThat(shell.run("traces", book, "K99").code()).isEqualTo(1);
        assertThat(shell.run("traces", book, "--run", "Race 9").out()).contains("No trace");
    }
}
