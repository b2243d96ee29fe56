package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.quantity.RunningTime;

/** What is due on the sample season, by its printed table of what should have been shown. */
class DueTest {
    @TempDir
    private Path folder;

    private Shell shell;
    private String book;

    @BeforeEach
    void bringInTheSeason() {
        shell = new Shell(folder);
        book = shell.sampleBook();
    }

    @Test
    void on_8_july_it_says_what_holds_what_is_over_and_what_comes_due() {
        String said = shell.run("due", book, "--as-of", "2026-07-08").out();

        assertThat(said)
                .contains("Before Round 6, Thornacre, as of Wed 8 Jul 2026", "Must be done before we go: 3")
                .containsPattern("Held +Rods RS-03 +K03, car 41 +over-rev, Sun 3 May 2026")
                .containsPattern("Over +Valve springs VS-03 +K03, car 41 +renew valve springs: 0\\.9 h over")
                .containsPattern("Due +Big-end shells BE-06");
    }

    @Test
    void on_26_may_it_says_that_the_springs_of_k05_run_out_at_round_4_and_in_which_run() throws Exception {
        JsonNode answer = new ObjectMapper()
                .readTree(shell.run("due", book, "--as-of", "2026-05-26", "--json")
                        .out());

        assertThat(answer.get("version").asInt()).isEqualTo(1);
        for (JsonNode mark : answer.get("marks")) {
            if ("VS-05".equals(mark.path("part").asText())
                    && "renew valve springs".equals(mark.path("name").asText())) {
                assertThat(mark.get("state").asText()).isEqualTo("due");
                assertThat(new RunningTime(mark.get("used").asLong()).hours(2)).isEqualByComparingTo("10.47");
                assertThat(mark.get("runsOut").get("event").asText()).startsWith("Round 4");
                assertThat(mark.get("runsOut").get("run").asText()).isNotEmpty();
                return;
            }
        }
        throw new AssertionError("VS-05 is not told");
    }

    @Test
    void on_8_july_it_says_which_jobs_are_open_what_is_with_others_and_what_the_shelf_lacks() throws Exception {
        String said = shell.run("due", book, "--as-of", "2026-07-08").out();

        assertThat(said)
                .contains("Jobs not done: 7", "Springs out and renewed, or a run-on signed (VS-03); before Round 6")
                .contains("Out with others: 3", "head 18-16 HD-05, with machinist G1, 1 day late, promised for 7 Jul")
                .contains("Too little on the shelf: 2", "cover gasket 18-16: 0 free, at least 2 wanted")
                .doesNotContain("Notices from makers");
        JsonNode answer = new ObjectMapper()
                .readTree(shell.run("due", book, "--as-of", "2026-07-08", "--json")
                        .out());
        assertThat(answer.get("outWithOthers").get(0).get("daysSilent").asInt()).isEqualTo(6);
        assertThat(answer.get("jobs")).hasSize(7);
    }

    @Test
    void on_8_july_it_says_which_incident_is_open_and_what_can_be_asked_back() throws Exception {
        assertThat(shell.run("due", book, "--as-of", "2026-07-08").out())
                .contains(
                        "Incidents still open: 1",
                        "  INC-05 ",
                        "car 57, K05, again after INC-03, retired, open 24 days")
                .contains("Money to ask back: 4")
                .contains(
                        "Entry, Round 6, Thornacre, car 41: 520.00 EUR to ask back, until Sat 11 Jul 2026, 3 days left")
                .contains(
                        "Entry, Round 7, Wendlestone, car 57: 520.00 EUR to ask back, until Sat 8 Aug 2026, 31 days left");
        JsonNode answer = new ObjectMapper()
                .readTree(shell.run("due", book, "--as-of", "2026-07-08", "--json")
                        .out());
        assertThat(answer.get("incidents")).hasSize(1);
        assertThat(answer.get("incidents").get(0).get("severity").asText()).isEqualTo("retired");
        assertThat(answer.get("incidents").get(0).get("daysOpen").asLong()).isEqualTo(24);
        JsonNode entry = answer.get("refunds").get(0);
        assertThat(entry.get("stillToCome").asText()).isEqualTo("520.00 EUR");
        assertThat(entry.get("by").asText()).isEqualTo("2026-07-11");
        assertThat(entry.get("late").asBoolean()).isFalse();
    }

    @Test
    void on_the_evening_of_4_july_it_says_what_nobody_looked_at_before_the_first_race() throws Exception {
        String said = shell.run("due", book, "--as-of", "2026-07-04").out();
        assertThat(said)
                .contains("Before the next run of car 41: Race 1, Sun 5 Jul 2026, 11:00; 4 not looked at")
                .contains("not looked at: Plugs", "not looked at: Told: first running after the skim, water 2 °C up");

        JsonNode next = new ObjectMapper()
                .readTree(shell.run("due", book, "--as-of", "2026-07-04", "--json")
                        .out())
                .get("beforeTheNextRun");
        assertThat(next).hasSize(2);
        assertThat(next.get(0).get("car").asText()).isEqualTo("41");
        assertThat(next.get(0).get("run").asText()).isEqualTo("Race 1");
        assertThat(next.get(0).get("looks")).hasSize(4);
        assertThat(next.get(0).get("looks").get(0).get("done").asBoolean()).isFalse();
        assertThat(next.get(0).get("marks").get(0).get("state").asText()).isEqualTo("held");
    }
}
