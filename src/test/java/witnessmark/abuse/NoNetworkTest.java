package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.launch.Main;

/** The program's commands with every call to the network watched: none is made. Java itself asks at its start whether there is a network, and no more. */
class NoNetworkTest {
    @TempDir(factory = InMemory.class)
    Path folder;

    @Test
    void no_command_connects_anywhere_or_waits_to_be_connected_to() throws Exception {
        NetworkWatch watch = new NetworkWatch(folder);
        Path logbook = folder.resolve("team.witness");
        Files.write(logbook, OldFormsTest.kept(10)); // so that a migration and a backup are among it
        for (String command : List.of("verify", "due")) {
            run(watch, command, logbook);
            assertThat(watch.connections()).as(command).isEmpty();
        }
    }

    private void run(NetworkWatch watch, String command, Path logbook) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Dwitnessmark.data=" + folder.resolve("data"),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                command,
                logbook.toString()));
        Path said = folder.resolve("said.txt");
        new ProcessBuilder(watch.watched(line))
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start()
                .waitFor();
        assertThat(Files.readString(said)).as(command).isNotEmpty().doesNotContain("Usage");
    }
}
