package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.report.PdfText;
import witnessmark.sample.SampleBooks;

/** The sample season in money from the command line, against the tables it was made from; and a statement against it. */
class CostTest {
    private static final Instant NOW = Instant.parse("2026-12-18T18:00:00Z");

    /** Told once; each test works on a copy. */
    private static Path told = Path.of("");

    @TempDir
    private Path folder;

    private Shell shell = new Shell(Path.of(""));
    private String book = "";

    @BeforeAll
    static void tellAll(@TempDir Path once) throws IOException {
        Shell shell = new Shell(once, NOW);
        told = Path.of(shell.sampleBook());
        try (Stream<Path> later = Files.list(SampleBooks.FOLDER.resolve("later"))) {
            for (Path chapter : later.filter(Files::isDirectory).sorted().toList()) {
                assertThat(shell.run("import", told.toString(), chapter.toString(), "--take-folder-values")
                                .code())
                        .isNotEqualTo(1);
            }
        }
    }

    @BeforeEach
    void copy() throws IOException {
        shell = new Shell(folder, NOW);
        book = Files.copy(told, folder.resolve("team.witness")).toString();
    }

    @Test
    void the_season_comes_to_what_its_table_says_and_the_range_its_switches_span() throws Exception {
        JsonNode cost = json("cost", book, "--season", "2026", "--json");
        JsonNode failures = cost.get("failures");
        assertThat(cost.get("currency").asText()).isEqualTo("EUR");
        assertThat(failures.get("cash").asText()).isEqualTo("14148.00");
        assertThat(failures.get("labour").asText()).isEqualTo("8454.60");
        assertThat(failures.get("missed").asText()).isEqualTo("1037.00");
        assertThat(failures.get("total").asText()).isEqualTo("23639.60");
        assertThat(failures.get("lowest").asText()).isEqualTo("22606.60");
        assertThat(failures.get("highest").asText()).isEqualTo("23639.60");
        assertThat(cost.get("budget").asText()).isEqualTo("51236.00");
        assertThat(cost.get("incidents")).hasSize(9);
        assertThat(cost.get("incidents").get(0).get("incident").asText()).isEqualTo("INC-05");
    }

    @Test
    void a_switch_takes_its_column_out_and_bars_are_put_together_as_asked() throws Exception {
        JsonNode cost = json("cost", book, "--without", "labour,shared", "--with", "spoiled", "--by", "part", "--json");
        // by hand: 14 148.00 in cash; 1 037.00 less 341.00 of the truck; 8 263.50 spoiled less 65.00, 198.00, 29.50,
        // 56.00 and 127.00 of the truck
        assertThat(cost.get("failures").get("total").asText()).isEqualTo("22632.00");
        assertThat(cost.get("bars").get(0).get("of").asText()).isEqualTo("valve springs");
        assertThat(plain(shell.run("cost", book, "--by", "cause").out())).contains("Run past its limit", "6 015.00");
    }

    /** What the page in the window says of it is its golden text. */
    @Test
    void a_season_is_told_in_the_figures_and_sentences_of_its_page_in_the_window() throws Exception {
        String page = plain(Files.readString(Path.of("src/test/golden/season_end.txt")));
        String said = plain(shell.run("cost", book, "--season", "2026").out());
        Matcher figures = Pattern.compile("label (Planned|Spent|on .*|kept .*|Still to be paid|Came in)\\n"
                        + "(?:(?:label|check box) [^0-9]*\\n)*label ([0-9 ]+\\.[0-9]{2})\\n")
                .matcher(page);
        Map<String, String> read = new LinkedHashMap<>();
        while (figures.find()) {
            read.put(figures.group(1), figures.group(2));
        }
        assertThat(read).hasSize(9);
        read.forEach((label, amount) ->
                assertThat(said).containsPattern(Pattern.quote(label) + " +" + Pattern.quote(amount) + "\\n"));
        assertThat(page.lines()
                        .filter(line -> line.matches("text (Failures took|Total|Rests on|Left out|Failures alone).*")))
                .hasSize(5)
                .allSatisfy(line -> assertThat(said).contains(line.substring("text ".length())));
        assertThat(said).doesNotContain("Weekends spoiled");
        assertThat(plain(shell.run("cost", book, "--with", "spoiled").out()))
                .contains("Weekends spoiled", "spoiled weekends counted");
    }

    /** By hand as in the ledger: springs at 272 and 272 while nothing failed, 368 at a failure, 6 064 that it cost besides. */
    @Test
    void all_that_went_on_a_kind_of_part_is_said_failed_or_not() throws Exception {
        assertThat(plain(shell.run("cost", book, "--by", "kind").out()))
                .containsPattern("Valve springs +544\\.00 +368\\.00 +6 064\\.00 +6 976\\.00");
        JsonNode cost = json("cost", book, "--by", "kind", "--json");
        assertThat(cost.get("by").asText()).isEqualTo("kind");
        JsonNode springs = java.util.stream.StreamSupport.stream(
                        cost.get("kinds").spliterator(), false)
                .filter(kind -> kind.get("kind").asText().equals("valve springs"))
                .findFirst()
                .orElseThrow();
        assertThat(springs.get("together").asText()).isEqualTo("6976.00");
    }

    @Test
    void words_that_are_no_season_no_way_and_no_switch_are_refused_with_those_that_are() {
        assertThat(shell.run("cost", book, "--season", "next").err()).contains("There is no season 'next'");
        assertThat(shell.run("cost", book, "--by", "colour").err()).contains("not by 'colour'");
        assertThat(shell.run("cost", book, "--without", "wages").err()).contains("'wages' is no part of the total");
        assertThat(shell.run("cost", book, "--season", "next").code()).isEqualTo(2);
    }

    @Test
    void the_season_is_printed_as_it_was_asked_for() throws Exception {
        Path file = folder.resolve("season.pdf");
        Shell.Ran ran = shell.run("cost", book, "--season", "2026", "--without", "labour", "--print", file.toString());
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains(" pages written to " + file).doesNotContain("Planned");
        PdfText read = PdfText.of(Files.readAllBytes(file));
        assertThat(ran.out()).startsWith(read.pages().size() + " pages");
        assertThat(read.solid()).contains(solid("own labour left out"), solid("15 185.00"));

        JsonNode answer = json("cost", book, "--print", file.toString(), "--json");
        assertThat(answer.get("command").asText()).isEqualTo("cost");
        assertThat(answer.get("pages").asInt()).isEqualTo(read.pages().size());
        assertThat(answer.get("file").asText()).isEqualTo(file.toString());
    }

    @Test
    void pages_that_cannot_be_written_are_refused_and_what_is_there_stays() throws Exception {
        Path theirs = Files.writeString(folder.resolve("accounts.pdf"), "%PDF-1.7 the accounts");
        Shell.Ran refused = shell.run("cost", book, "--print", theirs.toString(), "--json");
        assertThat(refused.code()).isEqualTo(1);
        JsonNode why = new ObjectMapper().readTree(refused.out());
        assertThat(why.get("worked").asBoolean()).isFalse();
        assertThat(why.get("found").get(0).get("kind").asText()).isEqualTo("FILE_EXISTS");
        assertThat(theirs).hasContent("%PDF-1.7 the accounts");

        Path gone = folder.resolve("gone").resolve("season.pdf");
        Shell.Ran none = shell.run("cost", book, "--print", gone.toString());
        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("Couldn't write to " + gone, "Nothing is saved.", "choose another place");
    }

    @Test
    void an_incident_is_told_line_by_line_with_what_would_have_prevented_it() throws Exception {
        JsonNode valve = json("incident", book, "inc-06", "--json");
        assertThat(valve.get("total").asText()).isEqualTo("8020.00");
        assertThat(valve.get("prevention").asText()).isEqualTo("272.00");
        assertThat(valve.get("preventionMinutes").asInt()).isEqualTo(360);
        assertThat(plain(shell.run("incident", book, "INC-06").out()))
                .contains("7 259.00 to 8 020.00 EUR", "1 thing would have prevented it: 272.00 EUR and 6.0 h");
        assertThat(shell.run("incident", book, "INC-99").err()).contains("INC-99");
    }

    /** The day after it was found nobody has written what it cost: that is no 0, and the season's total is the rest. */
    @Test
    void of_an_incident_that_is_new_it_says_that_no_cost_is_written_yet() throws Exception {
        JsonNode fresh = json("incident", book, "INC-03", "--as-of", "2026-04-15", "--json");
        for (String figure : List.of("cash", "labour", "missed", "spoiled", "total", "lowest", "highest")) {
            assertThat(fresh.get(figure).isNull()).as(figure).isTrue();
        }
        assertThat(fresh.get("unwritten").toString())
                .isEqualTo("[\"cash\",\"labour\",\"missed\",\"spoiled\",\"total\"]");
        String said =
                shell.run("incident", book, "INC-03", "--as-of", "2026-04-15").out();
        assertThat(said.substring(said.indexOf("What it cost")))
                .contains("No cost written yet")
                .doesNotContain("0.00");

        JsonNode season = json("cost", book, "--as-of", "2026-04-15", "--json");
        assertThat(season.get("incidents").findValuesAsText("total")).contains("null");
        java.math.BigDecimal sum = java.math.BigDecimal.ZERO;
        for (JsonNode each : season.get("incidents")) {
            sum = each.get("total").isNull()
                    ? sum
                    : sum.add(new java.math.BigDecimal(each.get("total").asText()));
        }
        assertThat(season.get("failures").get("total").asText()).isEqualTo(sum.toPlainString());
        assertThat(shell.run("cost", book, "--as-of", "2026-04-15").out())
                .containsPattern("INC-03.*not written +not written +not written +not written");
    }

    @Test
    void as_of_an_earlier_day_only_what_had_happened_counts() throws Exception {
        JsonNode july = json("cost", book, "--as-of", "2026-07-08", "--json");
        assertThat(july.get("incidents")).hasSize(5);
        assertThat(july.get("failures").get("missed").asText()).isEqualTo("0.00");
    }

    @Test
    void a_statement_is_taken_once_matched_on_agreement_and_what_is_left_over_is_listed() throws Exception {
        Path april = folder.resolve("april.csv");
        Files.writeString(
                april,
                "Date;Details;Amount\n13.5.2026;MACHINIST G1 seats lapped;-180,00\n30.4.2026;CUSTOMER C2;7.400,00\n"
                        + "30.4.2026;account fee;-9,90\n");
        assertThat(shell.run("statement", book, april.toString()).out()).contains("3 new lines from april.csv");
        assertThat(shell.run("statement", book, april.toString()).out())
                .contains("No new line", "3 were there already");
        JsonNode open = json("reconcile", book, "--json");
        assertThat(open.get("unmatchedLines")).hasSize(3);
        assertThat(shell.run("reconcile", book, "--agree").out()).contains("2 lines matched");
        JsonNode after = json("reconcile", book, "--json");
        assertThat(after.get("unmatchedLines")).hasSize(1);
        assertThat(after.get("unmatchedLines").get(0).get("text").asText()).isEqualTo("account fee");
        assertThat(after.get("costsOnNoStatement").size())
                .isEqualTo(open.get("costsOnNoStatement").size() - 1);
    }

    @Test
    void rows_that_cannot_be_read_hold_a_statement_back_until_somebody_says_so() throws IOException {
        Path may = folder.resolve("may.csv");
        Files.writeString(
                may,
                "Date,Details,Amount\n13/5/2026,fuel,-10.00\n14/5/2026,tea,-2.345\n"
                        .concat("15/5/2026,oil,-3.00\n".repeat(12)));
        Shell.Ran held = shell.run("statement", book, may.toString());
        assertThat(held.code()).isEqualTo(1);
        assertThat(held.out()).contains("Line 3: couldn't read '-2.345' under Amount", "Nothing was taken in");
        assertThat(shell.run("statement", book, may.toString(), "--keep-good-rows")
                        .out())
                .contains("13 new lines");
        assertThat(shell.run("statement", book, folder.resolve("none.csv").toString())
                        .code())
                .isEqualTo(1);
    }

    /** With thousands set apart by a plain space. */
    private static String plain(String out) {
        return out.replace('\u2009', ' ');
    }

    private JsonNode json(String... args) throws IOException {
        Shell.Ran ran = shell.run(args);
        assertThat(ran.code()).as(ran.err()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }
}
