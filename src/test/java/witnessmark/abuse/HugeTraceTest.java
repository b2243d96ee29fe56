package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * A trace larger than memory, read, reduced and kept by a program with a heap of 256 MB; in the long run 10 GB, through a
 * pipe, so that it lies on no disk.
 */
class HugeTraceTest {
    private static final long MEGABYTES = Numbers.of("hugeTrace", 24, 10 * 1024);
    private static final int MOST_MINUTES = 90;

    @TempDir
    Path place;

    @Test
    void a_trace_of_any_size_is_read_in_bounded_memory() throws Exception {
        Matcher numbers = said(read(null));
        long rows = Long.parseLong(numbers.group(1));
        assertThat(numbers.group(2)).isEqualTo(Long.toString(rows));
        assertThat(Long.parseLong(numbers.group(3))).isEqualTo((rows - 1) * 20);
        Numbers.tell("huge trace", Map.of("rows", rows));
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void and_so_is_one_that_comes_through_a_pipe() throws Exception {
        Path pipe = place.resolve("trace.csv");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        long[] written = {0};
        Thread writer = new Thread(() -> {
            try (HugeTraceProgram.Made made = new HugeTraceProgram.Made(MEGABYTES << 20);
                    OutputStream out = Files.newOutputStream(pipe)) {
                made.transferTo(out);
                written[0] = made.row;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        writer.setDaemon(true);
        writer.start();
        Matcher numbers = said(read(pipe));
        writer.join(60_000);
        assertThat(numbers.group(2)).isEqualTo(Long.toString(written[0]));
        assertThat(Long.parseLong(numbers.group(3))).isEqualTo((written[0] - 1) * 20);
        Numbers.tell("huge trace through a pipe", Map.of("rows", written[0]));
    }

    private static String read(@Nullable Path pipe) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                HugeTraceProgram.class.getName(),
                Long.toString(MEGABYTES << 20)));
        if (pipe != null) {
            command.add(pipe.toString());
        }
        Process program = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(program.waitFor(MOST_MINUTES, TimeUnit.MINUTES)).isTrue();
        assertThat(program.exitValue()).as(said).isZero();
        return said;
    }

    private static Matcher said(String text) {
        Matcher numbers = Pattern.compile("rows (\\d+) read (\\d+) running (\\d+) stopped true")
                .matcher(text);
        assertThat(numbers.find()).as(text).isTrue();
        return numbers;
    }
}
