package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.exchange.CsvStartingValues;
import witnessmark.logbook.port.EngineClass;

/** What limits usually start from, printed. Its figures: common practice, no source. */
class StartingListTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(EngineClass.class)
    void all_of_a_class_are_listed_for_programs(EngineClass of) throws Exception {
        Shell.Ran ran = new Shell(folder).run("starting-values", of.code(), "--json");
        assertThat(ran.code()).isZero();
        JsonNode root = new ObjectMapper().readTree(ran.out());
        assertThat(root.path("version").asInt()).isEqualTo(1);
        assertThat(root.path("startingValues")).hasSize((int) new CsvStartingValues()
                .all().stream().filter(value -> value.of() == of).count());
        assertThat(root.path("startingValues"))
                .allSatisfy(value -> assertThat(value.path("source").asText()).isNotEmpty());
    }

    @Test
    void people_read_figure_words_and_source_in_a_line() {
        String said = new Shell(folder).run("starting-values", "historic").out();
        assertThat(said).startsWith("Only where to begin");
        assertThat(said.lines())
                .anyMatch(line -> line.matches("valve springs: renew +10 to 20 h +common practice, no source"))
                .anyMatch(line -> line.matches("block: renew +on condition; common practice, no source"))
                .anyMatch(line -> line.matches("damper: renew +60 months +elastomer; common practice, no source"));
    }

    @Test
    void a_class_that_is_none_is_refused_with_those_there_are() {
        Shell.Ran ran = new Shell(folder).run("starting-values", "boat");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("'boat'").contains("club, historic, formula, motorcycle, endurance");
    }
}
