package witnessmark.desktop.task;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class OtherProgramTest {
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();

    @Test
    void what_the_program_prints_is_the_answer() {
        assertThat(OtherProgram.output(List.of(JAVA, "-version"), Duration.ofSeconds(60)))
                .hasValueSatisfying(printed -> assertThat(printed).contains(System.getProperty("java.version")));
    }

    @Test
    void a_program_that_is_not_there_or_fails_gives_no_answer() {
        assertThat(OtherProgram.output(List.of("no-such-program-here"), Duration.ofSeconds(60)))
                .isEmpty();
        assertThat(OtherProgram.output(List.of(JAVA, "-no-such-option"), Duration.ofSeconds(60)))
                .isEmpty();
    }

    @Test
    void a_program_that_takes_too_long_is_not_waited_for() {
        assertThat(OtherProgram.output(List.of(JAVA, "-version"), Duration.ZERO))
                .isEmpty();
    }

    @Test
    void a_file_is_never_opened_on_the_event_thread() throws Exception {
        SwingUtilities.invokeAndWait(() -> assertThatThrownBy(() -> OtherProgram.open(Path.of("jobs.pdf")))
                .isInstanceOf(IllegalStateException.class));
    }
}
