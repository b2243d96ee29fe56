package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Assumptions;

/** A program with each of its calls to the network written down by strace. */
public final class NetworkWatch {
    private final Path calls;

    /**
     * Skips the test where there is no strace, or a system that lets no program be watched.
     *
     * @param folder where it writes
     */
    public NetworkWatch(Path folder) throws InterruptedException {
        this.calls = folder.resolve("calls.txt");
        Assumptions.assumeTrue(there(), "strace is not there, or may not watch");
    }

    /** The command, watched. */
    public List<String> watched(List<String> command) {
        List<String> all = new ArrayList<>(
                List.of("strace", "-f", "--seccomp-bpf", "-e", "trace=network,execve", "-o", calls.toString()));
        all.addAll(command);
        return all;
    }

    /**
     * What was asked of the network by what was watched last, a call each. A call within this computer is none.
     *
     * @throws AssertionError if nothing was watched
     */
    public List<String> connections() throws IOException {
        List<String> seen = Files.readAllLines(calls);
        assertThat(seen).as("strace has seen the program run").anyMatch(call -> call.contains("execve("));
        return seen.stream()
                .filter(call -> call.matches(".* (connect|bind|listen|accept4?|sendto|sendmm?sg)\\(.*"))
                .filter(call -> !within(call))
                .toList();
    }

    /** libc asks who is logged in, the window speaks with its display. */
    private static boolean within(String call) {
        String plain = call.toUpperCase(Locale.ROOT);
        return plain.contains("AF_UNIX") || plain.contains("AF_NETLINK");
    }

    private static boolean there() throws InterruptedException {
        try {
            return new ProcessBuilder("strace", "-f", "--seccomp-bpf", "true")
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException none) {
            return false;
        }
    }
}
