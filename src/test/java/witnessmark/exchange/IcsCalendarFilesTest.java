package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.logbook.port.CalendarEntry;
import witnessmark.outcome.Outcome;

/** At the place of a calendar file there is the one before or the whole new one, and nothing beside it. */
class IcsCalendarFilesTest {
    private static final Instant MADE = Instant.parse("2026-07-08T18:00:00Z");

    @TempDir
    private Path folder;

    private static List<CalendarEntry> one(String title) {
        LocalDate day = LocalDate.of(2026, 7, 10);
        return List.of(new CalendarEntry("one", title, "", "", day, day, null, null));
    }

    private List<String> there() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void a_calendar_is_written_over_an_older_one() throws IOException {
        Path file = folder.resolve("season.ics");
        IcsCalendarFiles files = new IcsCalendarFiles(new UnsyncedDisk());

        assertThat(files.write(one("first"), MADE, file).didWork()).isTrue();
        assertThat(files.write(one("second"), MADE, file).didWork()).isTrue();

        assertThat(Files.readString(file)).contains("SUMMARY:second").doesNotContain("first");
        assertThat(there()).containsExactly("season.ics");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void a_disk_that_fails_once_leaves_the_older_one_and_nothing_beside_it(int step) throws IOException {
        Path file = folder.resolve("season.ics");
        assertThat(new IcsCalendarFiles(new UnsyncedDisk())
                        .write(one("first"), MADE, file)
                        .didWork())
                .isTrue();

        Outcome<Integer> written =
                new IcsCalendarFiles(new FailingDisk(step, false, "the disk is gone")).write(one("second"), MADE, file);

        assertThat(written.didWork()).isFalse();
        assertThat(Files.readString(file)).contains("SUMMARY:first");
        assertThat(there()).containsExactly("season.ics");
    }

    @Test
    void what_a_machine_left_that_went_off_is_in_nobodys_way() throws IOException {
        Files.writeString(folder.resolve("season.ics.new"), "half a calen");
        Path file = folder.resolve("season.ics");

        assertThat(new IcsCalendarFiles(new UnsyncedDisk())
                        .write(one("whole"), MADE, file)
                        .didWork())
                .isTrue();

        assertThat(there()).containsExactly("season.ics");
    }

    @Test
    void a_file_that_is_no_calendar_stays() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.ics"), "what we must not forget");

        assertThat(new IcsCalendarFiles(new UnsyncedDisk())
                        .write(one("calendar"), MADE, file)
                        .didWork())
                .isFalse();

        assertThat(Files.readString(file)).isEqualTo("what we must not forget");
    }
}
