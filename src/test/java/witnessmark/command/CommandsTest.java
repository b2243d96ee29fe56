package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.image.RecordTypes;
import witnessmark.sample.SampleBooks;

/** Each command on the sample season and on a logbook made by hand; figures of the sample are those of its own tables. */
class CommandsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private Shell shell;
    private String book;

    @BeforeEach
    void begin() {
        shell = new Shell(folder);
        book = shell.path("team.witness").toString();
    }

    private void sample() {
        assertThat(shell.sampleBook()).isEqualTo(book);
    }

    private JsonNode json(Shell.Ran ran) throws IOException {
        JsonNode answer = JSON.readTree(ran.out());
        assertThat(answer.get("version").asInt()).isEqualTo(1);
        return answer;
    }

    private long running(String name, String... more) throws IOException {
        String[] args = Stream.concat(Stream.of("life", book, name, "--json"), Stream.of(more))
                .toArray(String[]::new);
        for (JsonNode life : json(shell.run(args)).get("lives")) {
            if (life.get("counter").asText().equals("running")) {
                return life.get("known").asLong();
            }
        }
        throw new AssertionError("no running time of " + name);
    }

    @Test
    void the_sample_goes_in_and_its_lives_are_those_of_its_tables() throws IOException {
        assertThat(shell.run("new", book).code()).isZero();
        assertThat(shell.run("import", book, SampleBooks.FOLDER.toString())).satisfies(ran -> {
            assertThat(ran.code()).isZero();
            assertThat(ran.err()).isEmpty();
        });
        assertThat(shell.run("life", book, "K03", "--as-of", "2026-07-08").out())
                .startsWith("K03, as of Wed 8 Jul 2026")
                .containsPattern("running time +12\\.87 h");
        assertThat(shell.run("life", book, "vs 03").out()).containsPattern("running time +12\\.87 h");
        assertThat(running("K03", "--as-of", "2026-01-20"))
                .as("before its first run")
                .isZero();
    }

    /** K03 was first opened on 12 January 2026 (builds of the sample): the day before nothing is written of it. */
    @Test
    void before_the_first_entry_no_figure_is_given() throws IOException {
        sample();
        assertThat(shell.run("life", book, "K03", "--as-of", "2026-01-11").out())
                .contains("Not known on that day: the first entry is of Mon 12 Jan 2026.")
                .containsPattern("running time +not known")
                .doesNotContainPattern("\\b0");
        JsonNode answer = json(shell.run("life", book, "K03", "--as-of", "2026-01-11", "--json"));
        assertThat(answer.get("firstEntry").asText()).isEqualTo("2026-01-12");
        assertThat(answer.get("lives")).isEmpty();
        assertThat(json(shell.run("life", book, "K03", "--as-of", "2026-01-12", "--json"))
                        .get("lives"))
                .isNotEmpty();
    }

    /** Three runs of K22 do not say how long it was loaded: a figure of 0 alone would be taken for none. */
    @Test
    void a_life_that_runs_do_not_say_in_full_is_told_as_such_in_json_too() throws IOException {
        sample();
        for (JsonNode life : json(shell.run("life", book, "K22", "--json")).get("lives")) {
            if (life.get("counter").asText().equals("loaded")) {
                assertThat(life.get("complete").asBoolean()).isFalse();
                assertThat(life.get("runsNotRead").asInt()).isPositive();
            }
        }
    }

    @Test
    void the_entries_behind_a_life_add_up_to_it() throws IOException {
        sample();
        JsonNode answer = json(shell.run("life", book, "K03", "--entries", "--json"));
        long sum = 0;
        for (JsonNode entry : answer.get("entries")) {
            sum += entry.get("amount").asLong();
        }
        assertThat(sum).isEqualTo(running("K03"));
    }

    @Test
    void a_run_logged_moves_the_life_of_engine_and_springs_by_its_running_time() throws IOException {
        sample();
        long engine = running("K03");
        long springs = running("VS-03");
        Shell.Ran ran = shell.run(
                "log", book, "--car", "41", "--date", "2026-07-08", "--out", "14:00", "--running", "27:30", "--json");
        assertThat(ran.code()).isZero();
        assertThat(json(ran).get("run").asText()).hasSize(36);
        long minutes = 27 * 60_000 + 30_000;
        assertThat(running("K03")).isEqualTo(engine + minutes);
        assertThat(running("VS-03")).isEqualTo(springs + minutes);
        assertThat(shell.run("verify", book)).satisfies(verified -> {
            assertThat(verified.code()).isZero();
            assertThat(verified.out()).startsWith("As it was written");
        });
    }

    /** Whatever stands open in the timetable of another day, a run is written on the day that was given. */
    @Test
    void a_run_stays_on_the_day_given_and_takes_the_run_of_that_day_nearest_to_its_time() throws IOException {
        sample();
        shell = new Shell(folder, Instant.parse("2026-07-27T09:00:00Z"));
        assertThat(logged("2026-07-25", "12:05")).contains("Sat 25 Jul, 12:05, Practice 2");
        assertThat(logged("2026-07-26", "08:30")).contains("Sun 26 Jul, 08:30, Other");
        assertThat(logged("2026-07-26", "15:10")).contains("Sun 26 Jul, 15:10, Race 2");
        assertThat(logged("2026-07-26", "23:00"))
                .as("nothing of that day is near")
                .contains("Sun 26 Jul, 23:00, Other");
        assertThat(logged("2026-07-26", "18:00", "--run", "race 1")).contains("Sun 26 Jul, 18:00, Race 1");
        assertThat(shell.run("log", book, "--car", "41", "--out", "08:00", "--running", "10", "--yes")
                        .out())
                .as("today when no day is given")
                .contains("Mon 27 Jul, 08:00");
        assertThat(shell.run("log", book, "--car", "41", "--date", "2026-07-26", "--running", "20", "--run", "Race 9"))
                .satisfies(ran -> {
                    assertThat(ran.code()).isEqualTo(1);
                    assertThat(ran.err()).contains("Race 9");
                });
    }

    private String logged(String date, String out, String... more) {
        String[] args = {"log", book, "--car", "41", "--date", date, "--out", out, "--running", "10", "--yes"};
        Shell.Ran ran =
                shell.run(Stream.concat(Stream.of(args), Stream.of(more)).toArray(String[]::new));
        assertThat(ran.err()).isEmpty();
        return ran.out();
    }

    @Test
    void a_run_unlike_the_engine_s_own_is_saved_only_when_that_is_said() throws IOException {
        sample();
        long engine = running("K03");
        String[] odd = {
            "log",
            book,
            "--car",
            "41",
            "--date",
            "2026-07-08",
            "--out",
            "14:00",
            "--running",
            "27:30",
            "--field",
            "oil_pressure=45"
        };
        assertThat(shell.run(odd)).satisfies(ran -> {
            assertThat(ran.code()).isEqualTo(1);
            assertThat(ran.err()).contains("4.5").contains("--yes");
        });
        assertThat(running("K03")).isEqualTo(engine);
        String[] meant =
                Stream.concat(Stream.of(odd), Stream.of("--yes", "--json")).toArray(String[]::new);
        assertThat(json(shell.run(meant)).get("queried").asInt()).isEqualTo(1);
        assertThat(running("K03")).isGreaterThan(engine);
    }

    @ParameterizedTest(name = "{0}={1}: {2}")
    @CsvSource({
        "--car, 99, 99",
        "--running, 1h7x, 1h7x",
        "--running, 0, adds nothing",
        "--date, 31 Feb, 31 Feb",
        "--out, 25:00, 25:00",
        "--field, colour=red, colour",
    })
    void a_run_that_cannot_be_is_refused_with_a_sentence_and_nothing_is_saved(String option, String value, String said)
            throws IOException {
        sample();
        long engine = running("K03");
        String[] args = {"log", book, "--car", "41", "--date", "2026-07-08", "--running", "27:30", option, value};
        if (!option.equals("--field") && !option.equals("--out")) {
            for (int i = 2; i < 8; i += 2) {
                if (args[i].equals(option)) {
                    args[i + 1] = value;
                }
            }
            args = java.util.Arrays.copyOf(args, 8);
        }
        Shell.Ran ran = shell.run(args);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).containsIgnoringCase(said).doesNotContain("Exception");
        assertThat(ran.out()).isEmpty();
        assertThat(running("K03")).isEqualTo(engine);
    }

    @Test
    void a_season_written_out_and_read_in_again_gives_the_same_lives_and_the_same_folder() throws IOException {
        sample();
        Path out = shell.path("season");
        assertThat(shell.run("export", book, out.toString()).code()).isZero();
        String other = shell.path("other.witness").toString();
        shell.run("new", other);
        assertThat(shell.run("import", other, out.toString()).err()).isEmpty();
        Path again = shell.path("again");
        assertThat(shell.run("export", other, again.toString()).code()).isZero();
        try (Stream<Path> tables = Files.walk(out)) {
            for (Path table : tables.filter(Files::isRegularFile).toList()) {
                assertThat(again.resolve(out.relativize(table))).hasSameBinaryContentAs(table);
            }
        }
    }

    @Test
    void good_rows_are_taken_only_when_that_is_said() throws IOException {
        Path bad = shell.path("bad");
        copy(SampleBooks.FOLDER, bad);
        Path runs = bad.resolve("runs.csv");
        Files.writeString(runs, Files.readString(runs).replaceFirst("K03", "K99"));
        shell.run("new", book);
        assertThat(shell.run("import", book, bad.toString())).satisfies(ran -> {
            assertThat(ran.code()).isEqualTo(1);
            assertThat(ran.err()).contains("K99").contains("runs.csv").contains("--keep-good-rows");
        });
        assertThat(shell.run("life", book, "K03").code())
                .as("nothing was taken")
                .isEqualTo(1);
        assertThat(shell.run("import", book, bad.toString(), "--keep-good-rows").code())
                .isEqualTo(3);
        assertThat(shell.run("life", book, "K03").code()).isZero();
    }

    @Test
    void a_logbook_is_not_made_over_another_nor_where_there_is_no_folder() {
        sample();
        assertThat(shell.run("new", book)).satisfies(ran -> {
            assertThat(ran.code()).isEqualTo(1);
            assertThat(ran.err()).contains("team.witness");
        });
        assertThat(shell.run("new", shell.path("nowhere").resolve("a.witness").toString()))
                .satisfies(ran -> {
                    assertThat(ran.code()).isEqualTo(1);
                    assertThat(ran.err()).contains("nowhere");
                });
        assertThat(shell.path("nowhere")).doesNotExist();
    }

    @Test
    void a_file_that_is_no_logbook_is_said_to_be_none_and_stays_as_it_is() throws IOException {
        Path notes = Files.writeString(shell.path("notes.witness"), "plugs clean\n");
        for (String command : new String[] {"verify", "life", "export"}) {
            String[] args = command.equals("verify")
                    ? new String[] {command, notes.toString()}
                    : new String[] {command, notes.toString(), "K03"};
            Shell.Ran ran = shell.run(args);
            assertThat(ran.code()).as(command).isEqualTo(1);
            assertThat(ran.err()).as(command).contains("notes.witness");
        }
        assertThat(Files.readString(notes, StandardCharsets.UTF_8)).isEqualTo("plugs clean\n");
    }

    /** What a program reads is checked field by field against what a person is told by the same command. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "life BOOK X99",
                "life BOOK K03 --as-of tomorow",
                "log BOOK --car 99 --date 2026-07-08 --running 27:30",
                "log BOOK --car 41 --date 2026-07-08 --out 14:00 --running 27:30 --field oil_pressure=45",
                "import BOOK NOWHERE",
                "export BOOK BOOK",
                "new BOOK",
                "new NOWHERE/a.witness",
                "new OTHER --team Ours --zone London",
                "verify NOWHERE",
                "life BOOK",
                "life BOOK K03 --colour",
            })
    void a_refusal_asked_for_as_json_is_json_and_says_the_same(String line) throws IOException {
        sample();
        String[] words = line.replace("BOOK", book)
                .replace("NOWHERE", shell.path("nowhere").toString())
                .replace("OTHER", shell.path("other.witness").toString())
                .split(" ");
        Shell.Ran told = shell.run(words);
        assertThat(told.code()).isIn(1, 2);
        assertThat(told.out()).isEmpty();
        assertThat(told.err())
                .doesNotContain("Exception", "java.", "LocalDate", "what you wrote is kept", "What you typed");
        String[] asked = Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new);
        Shell.Ran ran = shell.run(asked);
        assertThat(ran.code()).isEqualTo(told.code());
        assertThat(ran.err()).isEmpty();
        JsonNode answer = json(ran);
        assertThat(answer.get("command").asText()).isEqualTo(words[0]);
        assertThat(answer.get("worked").asBoolean()).isFalse();
        StringBuilder said = new StringBuilder();
        answer.get("found")
                .forEach(found -> said.append(found.get("sentence").asText()).append('\n'));
        if (answer.has("said")) {
            said.append(answer.get("said").asText()).append('\n');
        }
        assertThat(said).hasToString(told.err());
    }

    @Test
    void problems_of_a_folder_carry_their_place_as_json() throws IOException {
        Path bad = shell.path("bad");
        copy(SampleBooks.FOLDER, bad);
        Files.delete(bad.resolve("parts.csv"));
        shell.run("new", book);
        JsonNode answer = json(shell.run("import", book, bad.toString(), "--json"));
        JsonNode first = answer.get("found").get(0);
        assertThat(first.get("kind").asText()).isEqualTo("FILE_MISSING");
        assertThat(first.get("file").asText()).isEqualTo("parts.csv");
        assertThat(first.has("row")).isFalse();
        assertThat(answer.get("found").size())
                .as("a line for each table, not for each row")
                .isLessThan(RecordTypes.all().size());
    }

    @ParameterizedTest(name = "as of {0} is as of {1}")
    @CsvSource({"2026-01-20, Tue 20 Jan 2026", "20 Jan, Tue 20 Jan 2026", "today, Wed 8 Jul 2026"})
    void a_day_is_read_as_people_type_it(String typed, String day) {
        sample();
        assertThat(shell.run("life", book, "K03", "--as-of", typed).out()).startsWith("K03, as of " + day);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-13-45", "31 Feb", "soon"})
    void a_day_that_is_none_is_refused_with_one_that_can_be_read(String typed) {
        sample();
        Shell.Ran ran = shell.run("life", book, "K03", "--as-of", typed);
        assertThat(ran.code()).isEqualTo(1);
        String example =
                ran.err().replaceFirst("(?s).*written like (.*?) or .*", "$1").strip();
        assertThat(shell.run("life", book, "K03", "--as-of", example).code())
                .as(ran.err())
                .isZero();
    }

    @Test
    void the_list_of_commands_says_what_each_does() {
        String help = shell.run("--help").out();
        for (String command : new String[] {"new", "import", "export", "life", "log", "verify"}) {
            assertThat(help).containsPattern("(?m)^  " + command + " +[A-Z].*\\.$");
        }
    }

    @ParameterizedTest(name = "{0} --help")
    @ValueSource(strings = {"new", "import", "export", "life", "log", "calendar", "jobsheet", "verify"})
    void help_is_said_in_whole_sentences(String command) {
        Shell.Ran ran = shell.run(command, "--help");
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("Usage: witness-mark " + command)
                .doesNotContain("''")
                .doesNotContain("command.");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()));
            }
        }
    }
}
