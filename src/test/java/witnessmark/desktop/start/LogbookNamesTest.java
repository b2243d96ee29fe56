package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogbookNamesTest {
    @ParameterizedTest(name = "{0} is kept in {1}")
    @CsvSource({
        "Marrowgate Racing, Marrowgate-Racing.witness",
        "'  A / B : C  ', A-B-C.witness",
        "'', logbook.witness",
        "'...', logbook.witness",
        "Équipe Bleue, Équipe-Bleue.witness",
        "'a\\b|c?', a-b-c.witness"
    })
    void a_team_gets_a_file_name_that_every_system_takes(String team, String name) {
        assertThat(LogbookNames.forTeam(team)).isEqualTo(name);
    }

    @Test
    void a_path_without_the_ending_gets_it_so_that_it_is_offered_when_a_logbook_is_opened() {
        assertThat(LogbookNames.ended(Path.of("x", "season"))).isEqualTo(Path.of("x", "season.witness"));
        assertThat(LogbookNames.ended(Path.of("x", "season.db"))).isEqualTo(Path.of("x", "season.db.witness"));
        assertThat(LogbookNames.ended(Path.of("x", "No. 7"))).isEqualTo(Path.of("x", "No. 7.witness"));
        assertThat(LogbookNames.ended(Path.of("x", "A.WITNESS"))).isEqualTo(Path.of("x", "A.WITNESS"));
    }

    @Test
    void a_season_folder_is_named_after_the_logbook_and_the_day() {
        assertThat(LogbookNames.seasonFolder(Path.of("x", "ours.witness"), LocalDate.of(2026, 7, 8)))
                .isEqualTo("ours-2026-07-08");
    }
}
