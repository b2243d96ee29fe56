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
    void a_path_without_an_ending_gets_one_and_another_stays() {
        assertThat(LogbookNames.ended(Path.of("x", "season"))).isEqualTo(Path.of("x", "season.witness"));
        assertThat(LogbookNames.ended(Path.of("x", "season.db"))).isEqualTo(Path.of("x", "season.db"));
    }

    @Test
    void a_season_folder_is_named_after_the_logbook_and_the_day() {
        assertThat(LogbookNames.seasonFolder(Path.of("x", "ours.witness"), LocalDate.of(2026, 7, 8)))
                .isEqualTo("ours-2026-07-08");
    }
}
