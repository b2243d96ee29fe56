package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.launch.Main;

/** The program's commands with every call to the network watched: none is made. Java itself asks at its start whether there is a network, and no more. */
class NoNetworkTest {
    @TempDir(factory = InMemory.class)
    Path folder;

    @Test
    void no_command_connects_anywhere_or_waits_to_be_connected_to() throws Exception {
        Assumptions.assumeTrue(has("strace", "-f", "true"), "strace");
        Path logbook = folder.resolve("team.witness");
        Files.write(logbook, OldFormsTest.kept(10)); // so that a migration and a backup are among it
        List<String> seen = new ArrayList<>();
        for (List<String> command : List.of(List.of("verify"), List.of("due"))) {
            seen.addAll(calls(command, logbook));
        }
        assertThat(seen).as("strace itself has seen the program run").isNotEmpty();
        assertThat(seen)
                .filteredOn(call -> call.matches(".* (connect|bind|listen|accept4?|sendto|sendmm?sg)\\(.*"))
                .filteredOn(call -> !call.contains("AF_UNIX")) // a file of this computer: libc asks who is logged in
                .isEmpty();
    }

    private List<String> calls(List<String> command, Path logbook) throws IOException, InterruptedException {
        Path calls = folder.resolve("calls.txt");
        List<String> line = new ArrayList<>(List.of(
                "strace",
                "-f",
                "-e",
                "trace=network,execve",
                "-o",
                calls.toString(),
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Dwitnessmark.data=" + folder.resolve("data"),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        line.addAll(command);
        line.add(logbook.toString());
        Path said = folder.resolve("said.txt");
        new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start()
                .waitFor();
        assertThat(Files.readString(said))
                .as(String.join(" ", command))
                .isNotEmpty()
                .doesNotContain("Usage");
        return Files.readAllLines(calls);
    }

    private static boolean has(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).start().waitFor() == 0;
        } catch (IOException none) {
            return false;
        }
    }
}
