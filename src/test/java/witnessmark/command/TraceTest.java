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
import witnessmark.trace.LoggerFiles;
import witnessmark.trace.Packs;

/** A logger's file reduced from the command line, with no logbook. */
class TraceTest {
    @TempDir
    private Path folder;

    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(folder);
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void a_mechanical_over_rev_is_told_with_its_place() throws IOException {
        Shell.Ran ran = shell.run("trace", file("race1.csv", LoggerFiles.mechanicalOverRev()), "--rpm-limit", "8500");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("1 over-rev", "These are proposals")
                .containsPattern("  at 18:47.4 9.340.rpm for 0.42 s, gear 2, throttle shut: mechanical");
    }

    @Test
    void packed_files_say_the_same_and_json_has_a_version() throws IOException {
        Path packed = packed(bytes -> bytes);
        JsonNode answer = new ObjectMapper()
                .readTree(shell.run("trace", packed.toString(), "--json").out());
        assertThat(answer.get("version").asInt()).isEqualTo(1);
        assertThat(answer.get("worked").asBoolean()).isTrue();
        JsonNode part = answer.get("parts").get(0);
        assertThat(part.get("running").asLong()).isEqualTo(1_452_000);
        assertThat(part.get("oilPressureDipCount").asInt()).isZero();
        assertThat(answer.get("defects").get("sensor drop").asInt()).isEqualTo(2);
    }

    @Test
    void a_packed_file_cut_short_is_told_with_its_place_and_read_as_far_as_it_goes() throws IOException {
        Path cut = packed(bytes -> java.util.Arrays.copyOf(bytes, bytes.length / 2));
        Shell.Ran ran = shell.run("trace", cut.toString());
        assertThat(ran.code()).as("worked except for what is told").isEqualTo(3);
        assertThat(ran.err())
                .containsPattern(
                        "The file ends too early: 16.\\d{3} rows of it could be read, which last 13 min \\d\\d s\\.")
                .contains("What came after is missing.");
        assertThat(ran.out()).containsPattern("  file ends too early: 1 \\(first at 13:\\d\\d\\.\\d\\)");

        JsonNode answer = new ObjectMapper()
                .readTree(shell.run("trace", cut.toString(), "--json").out());
        assertThat(answer.get("worked").asBoolean()).isTrue();
        assertThat(answer.get("found").get(0).get("kind").asText()).isEqualTo("TRACE_CUT_SHORT");
        assertThat(answer.get("found").get(0).get("stops").asBoolean()).isFalse();
        assertThat(answer.get("defects").get("cut off").asInt()).isEqualTo(1);
        JsonNode where = null;
        for (JsonNode each : answer.get("located")) {
            where = each.get("kind").asText().equals("cut off") ? each : where;
        }
        assertThat(where.get("from").asDouble())
                .isEqualTo(answer.get("parts").get(0).get("lasted").asDouble());
    }

    @Test
    void a_packed_file_that_does_not_fit_its_checksum_is_told() throws IOException {
        Path spoilt = packed(bytes -> {
            bytes[bytes.length - 8] ^= 1;
            return bytes;
        });
        Shell.Ran ran = shell.run("trace", spoilt.toString());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("The checksum in the file does not fit what was unpacked");
        assertThat(ran.out()).containsPattern("(?m)^  wrong checksum: 1 *$");
        JsonNode answer = new ObjectMapper()
                .readTree(shell.run("trace", spoilt.toString(), "--json").out());
        assertThat(answer.get("found").get(0).get("kind").asText()).isEqualTo("TRACE_SUSPECT");
        assertThat(answer.get("defects").get("wrong checksum").asInt()).isEqualTo(1);
    }

    private Path packed(java.util.function.UnaryOperator<byte[]> spoil) throws IOException {
        return Files.write(folder.resolve("run3.csv.gz"), spoil.apply(Packs.gzip(LoggerFiles.falseDips())));
    }

    @Test
    void what_is_asked_is_answered_by_options() throws IOException {
        String text = "n1;Gas\n" + "6000;50\n".repeat(101);
        String odd = file("odd.csv", text);
        Shell.Ran asked = shell.run("trace", odd);
        assertThat(asked.code()).isEqualTo(1);
        assertThat(asked.err()).contains("Say how many samples there are a second");
        Shell.Ran ran = shell.run("trace", odd, "--rate", "50", "--channel", "n1=engine speed");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("n1: engine speed, taken to be in rpm").containsPattern("Ran 2.s");
        assertThat(shell.run("trace", odd, "--rate", "50", "--channel", "n2=engine speed")
                        .err())
                .contains("No column is called 'n2'");
        assertThat(shell.run("trace", odd, "--rate", "fast").code()).isEqualTo(2);
        assertThat(shell.run("trace", odd, "--channel", "n1=speed of engine").err())
                .contains("It is one of: engine speed, throttle");
    }

    @Test
    void what_is_no_trace_is_refused_in_a_sentence() throws IOException {
        Shell.Ran none = shell.run("trace", folder.resolve("none.csv").toString());
        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("none.csv");
        Shell.Ran letter = shell.run("trace", file("letter.txt", "Dear team\n"));
        assertThat(letter.code()).isEqualTo(1);
        assertThat(letter.err()).contains("No row of figures was found.");
        Shell.Ran zip = shell.run("trace", file("bad.zip", "PK\u0003\u0004 and no more"));
        assertThat(zip.code()).isEqualTo(1);
        assertThat(zip.err()).contains("There is no file in the archive.");
    }
}
