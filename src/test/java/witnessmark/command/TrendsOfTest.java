package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Trends from the command line, on the evening the invented season opens. */
class TrendsOfTest {
    @TempDir
    private static Path folder;

    private static Shell shell = new Shell(Path.of(""));
    private static String book = "";

    @BeforeAll
    static void read() {
        shell = new Shell(folder);
        book = shell.sampleBook();
    }

    /** The set of K03 lost 6 % by 12.87 h, its worst spring 9 %, where the builder allows 8 %. */
    @Test
    void of_all_engines_what_asks_for_something_is_listed_with_what_it_rests_on() {
        assertThat(shell.run("trends", book).out())
                .contains("Spring force, VS-03")
                .contains("Exhaust 3B: 266 N, 25 N less than the baseline of 291 N; past what is allowed")
                .contains(
                        "Mean of 16 gets weaker: 291 → 287 → 284 → 279 → 274 N. At this rate 267.72 N in about 4.2 h, "
                                + "not before 3.2 h.")
                .contains("falls by 1.8 N an hour of running (0.89 to 2 N nine times in ten)")
                .contains("Filter got worse twice running")
                .doesNotContain("ylinder 1");
    }

    @Test
    void of_one_engine_all_is_listed_with_how_far_its_cylinders_are_apart() {
        assertThat(shell.run("trends", book, "K06").out())
                .startsWith("K06")
                .contains("Nothing that was read on K06 gets worse or is past its limit")
                .contains("Cylinder 1: 3 → 3 %; it takes 4 readings to see a trend, 2 are there")
                .contains("2 readings since build 2, 5 Jun")
                .contains("0 % between the highest and the lowest of the last day");
    }

    @Test
    void an_earlier_day_knows_nothing_of_what_was_read_later() {
        assertThat(shell.run("trends", book, "K06", "--as-of", "2026-05-26").out())
                .contains("Cylinder 2: 12 %; no more than 10 % is allowed");
    }

    @Test
    void an_engine_that_is_not_there_is_said() {
        Shell.Ran none = shell.run("trends", book, "K99");

        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("K99");
    }

    @Test
    void the_same_as_json() throws IOException {
        JsonNode springs = new ObjectMapper()
                .readTree(shell.run("trends", book, "K03", "--json").out())
                .get("engines")
                .get(0)
                .get("readings")
                .get(0);
        JsonNode mean = springs.get("places").get(1);

        assertThat(springs.get("kind").asText()).isEqualTo("spring force");
        assertThat(springs.get("part").asText()).isEqualTo("VS-03");
        assertThat(mean.get("trend").asText()).isEqualTo("falling");
        assertThat(mean.get("readings")).hasSize(5);
        assertThat(mean.get("slope").get("perHour").asDouble()).isNegative();
        assertThat(mean.get("limits").get(0).get("hoursLikely").asDouble()).isCloseTo(4.2, within(0.05));
    }
}
