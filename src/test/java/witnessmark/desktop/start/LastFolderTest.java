package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.MemorySettings;

/** Where file dialogs begin, also after the program was closed. */
class LastFolderTest {
    @TempDir
    private Path home;

    private final MemorySettings settings = new MemorySettings();
    private Path stick;
    private Path desk;

    @BeforeEach
    void two_folders() throws IOException {
        stick = Files.createDirectory(home.resolve("stick"));
        desk = Files.createDirectory(home.resolve("desk"));
    }

    private LastFolder folders() {
        return new LastFolder(settings, home);
    }

    @Test
    void the_first_begins_at_home() {
        assertThat(folders().of("logbook")).isEqualTo(home);
        assertThat(folders().place("calendar", home.resolve("team.ics"))).isEqualTo(home.resolve("team.ics"));
    }

    @Test
    void each_begins_where_it_was_and_a_new_one_where_the_last_was() {
        folders().chosen("logbook", stick.resolve("team.witness"));
        folders().chosen("season", desk.resolve("season"));

        assertThat(folders().of("logbook")).isEqualTo(stick);
        assertThat(folders().of("season")).isEqualTo(desk);
        assertThat(folders().of("calendar")).isEqualTo(desk);
        assertThat(folders().place("calendar", home.resolve("team.ics"))).isEqualTo(desk.resolve("team.ics"));
    }

    @Test
    void a_file_that_somebody_placed_stays_there() {
        folders().chosen("logbook", stick.resolve("team.witness"));
        assertThat(folders().place("logbook", desk.resolve("ours.witness"))).isEqualTo(desk.resolve("ours.witness"));
    }

    @Test
    void a_folder_that_is_gone_is_passed_over() throws IOException {
        folders().chosen("season", desk.resolve("season"));
        folders().chosen("logbook", stick.resolve("team.witness"));
        Files.delete(stick);
        assertThat(folders().of("logbook")).isEqualTo(home);
        assertThat(folders().of("season")).isEqualTo(desk);
    }
}
