package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A disk that fails: each call of a short piece of work in turn, once and for good, with an error of the device, with no
 * space left, with a quota used up. The program says so in a whole sentence, acknowledges nothing that is not there
 * afterwards, keeps its logbook whole, and opens it again once the disk is well.
 */
class FailingDiskTest {
    /** Where calls are many and alike (pages read, pages of a copy) every so manieth fails; the rest fail each. */
    private static final int STEP = Numbers.of("step", 60, 1);

    @TempDir(factory = InMemory.class)
    static Path folder;

    private static DiskLibrary library;

    @BeforeAll
    static void build() throws Exception {
        library = DiskLibrary.builtIn(folder);
    }

    @Test
    void whichever_call_to_the_disk_fails_it_is_said_and_nothing_saved_is_lost() throws Exception {
        List<String> said = said("honest", false, STEP);
        System.out.println("R3 failing disk: " + said.get(said.size() - 1));
        assertThat(said).filteredOn(line -> line.startsWith("wrong")).isEmpty();
        assertThat(said.get(said.size() - 1)).startsWith("counts {BACKING_UP EDQUOT=");
    }

    /** The test itself is tested: a program that says saved whatever the disk says. */
    @Test
    void a_program_that_says_saved_without_having_saved_is_found_out() throws Exception {
        assertThat(said("careless", true, 1)).anyMatch(line -> line.endsWith("was said to be saved and is not there"));
    }

    private static List<String> said(String name, boolean careless, int step) throws Exception {
        Path place = Files.createDirectories(folder.resolve(name));
        Path control = Files.write(folder.resolve(name + ".control"), new byte[DiskControl.LENGTH]);
        Path errors = folder.resolve(name + ".err");
        Process program = library.program(
                        FailingDiskProgram.class,
                        List.of(),
                        Map.of("DISK_FOLDER", place.toString(), "DISK_CONTROL", control.toString()),
                        place.toString(),
                        control.toString(),
                        Integer.toString(step),
                        Boolean.toString(careless))
                .redirectError(errors.toFile())
                .start();
        try (BufferedReader out = program.inputReader()) {
            List<String> lines = out.lines().toList();
            assertThat(program.waitFor()).as(Files.readString(errors)).isZero();
            return lines;
        }
    }
}
