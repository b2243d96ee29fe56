package witnessmark.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A second program on this computer: another Java with a {@link ChildMain} in it. */
final class Child implements AutoCloseable {
    /** One that has not ended by then hangs. */
    private static final int LONGEST_SECONDS = 60;

    private final Process process;
    private final Writer in;
    private final BufferedReader out;
    private final Path errors;

    private Child(Process process, Path errors) {
        this.process = process;
        this.in = process.outputWriter(StandardCharsets.UTF_8);
        this.out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        this.errors = errors;
        process.onExit().orTimeout(LONGEST_SECONDS, TimeUnit.SECONDS).exceptionally(late -> process.destroyForcibly());
    }

    /**
     * Starts one.
     *
     * @param data its data folder; made if need be
     * @param within words of a command that starts the program within bounds, none for as it is
     */
    static Child start(Path data, String host, String... within) throws IOException {
        Files.createDirectories(data);
        List<String> command = new ArrayList<>(List.of(within));
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                ChildMain.class.getName(),
                data.toString(),
                host));
        Path errors = data.resolve("errors.txt");
        return new Child(
                new ProcessBuilder(command).redirectError(errors.toFile()).start(), errors);
    }

    /** Asks for one thing and waits for the answer. */
    String ask(String line) throws IOException {
        tell(line);
        return read();
    }

    void tell(String line) throws IOException {
        in.write(line + "\n");
        in.flush();
    }

    String read() throws IOException {
        String answer = out.readLine();
        if (answer == null) {
            throw new IOException("the other program ended: " + Files.readString(errors));
        }
        return answer;
    }

    /** Kills it as a power switch would, and gives what it had said until then. */
    List<String> kill() throws InterruptedException {
        process.toHandle().destroyForcibly(); // the handle leaves what was said to be read
        process.waitFor();
        return out.lines().toList();
    }

    @Override
    public void close() throws IOException {
        in.close();
        try {
            if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
        out.close();
    }
}
