package witnessmark.abuse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/** The library of {@code src/test/c/disk.c}, through which a program sees a disk that can be watched and can fail. */
final class DiskLibrary {
    private static final Path SOURCE = Path.of(System.getProperty("project.basedir", "."), "src/test/c/disk.c");

    private final Path library;

    private DiskLibrary(Path library) {
        this.library = library;
    }

    /** Compiles it. Where there is no C compiler for this system the test is skipped, or fails if it is required. */
    static DiskLibrary builtIn(Path folder) throws IOException, InterruptedException {
        Path library = folder.resolve("disk.so");
        boolean built = false;
        if (System.getProperty("os.name").equals("Linux")) {
            List<String> compile = List.of(
                    "cc", "-O2", "-shared", "-fPIC", "-o", library.toString(), SOURCE.toString(), "-ldl", "-lpthread");
            try {
                built = new ProcessBuilder(compile).inheritIO().start().waitFor() == 0;
            } catch (IOException e) {
                System.out.println("no C compiler here: " + e.getMessage());
            }
        }
        if (Boolean.getBoolean("faults.required")) {
            Assertions.assertTrue(built, "a disk that fails needs Linux and a C compiler, cc");
        }
        Assumptions.assumeTrue(built, "a disk that fails needs Linux and a C compiler, cc");
        return new DiskLibrary(library);
    }

    /**
     * A Java that runs a class of these tests on the watched disk.
     *
     * @param before folders that come first on its class path
     * @param environment {@code DISK_FOLDER}, {@code DISK_LOG}, {@code DISK_CONTROL}
     */
    ProcessBuilder program(Class<?> main, List<Path> before, Map<String, String> environment, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.util.logging.config.file=" + System.getProperty("java.util.logging.config.file", ""),
                "-cp"));
        StringBuilder path = new StringBuilder();
        before.forEach(folder -> path.append(folder).append(java.io.File.pathSeparator));
        command.add(path + System.getProperty("java.class.path"));
        command.add(main.getName());
        command.addAll(List.of(arguments));
        ProcessBuilder program = new ProcessBuilder(command);
        program.environment().putAll(environment);
        program.environment().put("LD_PRELOAD", library.toString());
        return program;
    }

    /** An empty file for the library to write or read. */
    static Path empty(Path file) throws IOException {
        return Files.createFile(file);
    }
}
