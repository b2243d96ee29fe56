package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;

/** Tables saved again by another program: other line ends, other separators. */
class OtherProgramsTest extends ReadingTest {
    @Test
    void a_text_of_several_lines_is_the_same_after_another_system_ended_its_lines_anew() {
        SeasonText season = SeasonText.small().cell("runs.csv", 1, "remarks", "plugs clean\nnoise at idle");
        List<Entry<?>> first = read(season).orThrow();
        Facts logbook = Facts.none().with(first);
        byte[] returns = season.text("runs.csv").replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);

        Outcome<List<Entry<?>>> again =
                folders.read(season.bytes("runs.csv", returns).in(place.resolve("again")), logbook);
        assertThat(again).isEqualTo(Outcome.worked(List.of()));
        assertThat(logbook.of(Run.class).all())
                .anyMatch(run -> run.fact().remarks().equals("plugs clean\nnoise at idle"));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource({"59, semicolons", "9, tabs"})
    void other_separators_are_told_in_one_sentence(int separator, String called) {
        SeasonText season = SeasonText.small();
        String text = season.text("cars.csv").replace(',', (char) separator);
        Outcome<List<Entry<?>>> read = read(season.bytes("cars.csv", text.getBytes(StandardCharsets.UTF_8)));
        assertThat(read.problems().get(0))
                .isEqualTo(problem("cars.csv", 1, null, ProblemKind.OTHER_SEPARATOR, "cars.csv", called));
        assertThat(read.problems())
                .filteredOn(problem -> problem.place() != null
                        && problem.place().file().equals("cars.csv")
                        && problem.kind() != ProblemKind.ROWS_WAIT)
                .hasSize(1);
    }

    @Test
    void the_line_a_spreadsheet_writes_above_the_headings_is_passed_over() {
        SeasonText season = SeasonText.small();
        Outcome<List<Entry<?>>> plain = read(season);
        String text = "sep=,\n" + season.text("cars.csv");
        assertThat(read(season.bytes("cars.csv", text.getBytes(StandardCharsets.UTF_8))))
                .isEqualTo(plain);
    }
}
