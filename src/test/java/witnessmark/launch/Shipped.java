package witnessmark.launch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import witnessmark.sample.SampleBooks;

/**
 * What a program said that goes through the shipped one, started as people start it.
 *
 * @param lines on its output
 * @param errors on its error output
 */
record Shipped(List<String> lines, String errors) {
    private static final int LONGEST_SECONDS = 90;

    /** What goes through the program. */
    interface Walk {
        void go() throws Exception;
    }

    /** The main of a program that goes through the shipped one: ends Java, with 0 only where the walk came to its end. */
    static void run(Walk walk) {
        int status = 1;
        try {
            walk.go();
            status = 0;
        } catch (Exception e) {
            e.printStackTrace();
        } finally {
            Runtime.getRuntime().halt(status);
        }
    }

    static Shipped through(Class<?> main, Path folder) throws IOException, InterruptedException {
        return through(main, folder, line -> line);
    }

    /**
     * As above, with something in front of the command.
     *
     * @param started what is started for the program's own command
     */
    static Shipped through(Class<?> main, Path folder, UnaryOperator<List<String>> started)
            throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Process program = new ProcessBuilder(started.apply(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Dwitnessmark.data=" + folder.resolve("data"),
                        "-Dwitnessmark.sample=" + SampleBooks.FOLDER.toAbsolutePath(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        main.getName())))
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        if (!program.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
            program.destroyForcibly().waitFor();
        }
        return new Shipped(
                Files.readAllLines(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }
}
