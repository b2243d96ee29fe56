package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Words that are no command, places that cannot be written to, names that are too long. */
class WhatProgramSaysTest {
    @TempDir
    private Path folder;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "bogus, true",
        "exprot, true",
        "--bogus, true",
        "export, true",
        "team.witness, false",
        "seasons/team, false",
        "/nowhere/at/all, false"
    })
    void a_word_is_a_command_unless_it_is_a_file_s(String first, boolean command) {
        assertThat(Program.isFor(first)).isEqualTo(command);
    }

    @Test
    void a_file_that_is_there_is_opened_whatever_it_is_called() throws IOException {
        assertThat(Program.isFor(Files.createFile(folder.resolve("bogus")).toString()))
                .isFalse();
        assertThat(Program.isFor()).isFalse();
    }

    @Test
    void a_word_that_is_no_command_is_named_with_those_that_are() {
        Shell.Ran ran = new Shell(folder).run("bogus", "team.witness");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("'bogus'", "Nothing was done.")
                .contains("new", "import", "export", "life", "due", "log", "verify")
                .doesNotContain("display");
    }

    @Test
    void a_place_that_cannot_be_written_to_is_told_with_what_to_do() throws IOException {
        Shell shell = new Shell(folder);
        String book = shell.path("team.witness").toString();
        shell.run("new", book, "--team", "Ours");
        Path file = Files.createFile(folder.resolve("file"));
        Shell.Ran ran = shell.run("export", book, file.resolve("season").toString());
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err())
                .contains(file.toString(), "Nothing is saved.", "choose another place")
                .doesNotContain("there is nothing at that place");
    }

    @Test
    void a_day_that_is_the_clock_s_where_it_should_be_the_story_s_is_told() {
        Problem unknown = Problem.of(ProblemKind.SAMPLE_DAY_UNKNOWN, folder.resolve("sample-season"));
        Shell shell = new Shell(
                folder,
                Instant.parse("2026-07-08T18:00:00Z"),
                day -> new Outcome.WorkedExcept<>(day, List.of(unknown)));
        String book = shell.path("team.witness").toString();
        shell.run("new", book, "--team", "Ours");
        Shell.Ran ran = shell.run("due", book);
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).contains("the day of its story cannot be read", "sample-season", "clock");
        assertThat(shell.run("due", book, "--json").out()).contains("SAMPLE_DAY_UNKNOWN");
    }

    @ParameterizedTest(name = "a name of {0} letters")
    @CsvSource({"100, true", "101, false", "400, false"})
    void a_name_is_no_longer_than_can_be_shown(int letters, boolean taken) throws IOException {
        Shell shell = new Shell(folder);
        String book = shell.path("team.witness").toString();
        shell.run("new", book, "--team", "Ours");
        Path season = Files.createDirectory(folder.resolve("season"));
        Files.writeString(season.resolve("cars.csv"), "name,note\n" + "ü".repeat(letters) + ",\n");
        Shell.Ran ran = shell.run("import", book, season.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(taken ? 0 : 1);
        if (!taken) {
            assertThat(ran.err())
                    .contains(
                            "cars.csv, line 2 (ü", "), column name: Number has " + letters + " letters", "Shorten it");
        }
    }
}
