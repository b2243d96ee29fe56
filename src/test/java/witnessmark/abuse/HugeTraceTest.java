package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A trace larger than memory, read, reduced and kept by a program with a heap of 256 MB; of 1 GB in the long run. */
class HugeTraceTest {
    private static final long MEGABYTES = Numbers.of("hugeTrace", 24, 1024);
    private static final int MOST_MINUTES = 30;

    @Test
    void a_trace_of_any_size_is_read_in_bounded_memory() throws IOException, InterruptedException {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        HugeTraceProgram.class.getName(),
                        Long.toString(MEGABYTES << 20))
                .redirectErrorStream(true)
                .start();
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(program.waitFor(MOST_MINUTES, TimeUnit.MINUTES)).isTrue();
        assertThat(program.exitValue()).as(said).isZero();
        Matcher numbers = Pattern.compile("rows (\\d+) read (\\d+) running (\\d+) stopped true")
                .matcher(said);
        assertThat(numbers.find()).as(said).isTrue();
        long rows = Long.parseLong(numbers.group(1));
        assertThat(numbers.group(2)).isEqualTo(Long.toString(rows));
        assertThat(Long.parseLong(numbers.group(3))).isEqualTo((rows - 1) * 20);
        Numbers.tell("huge trace", java.util.Map.of("rows", rows));
    }
}
