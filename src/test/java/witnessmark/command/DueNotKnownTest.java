package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.logbook.sheets.AddCar;
import witnessmark.logbook.sheets.AddEngine;
import witnessmark.logbook.sheets.AddEvent;
import witnessmark.logbook.sheets.OwnLogbook;

/** An engine with no part and no limit is not known on the command line as it is in the window. */
class DueNotKnownTest {
    @TempDir
    Path folder;

    @Test
    void an_engine_that_goes_with_nothing_recorded_is_told() throws IOException {
        try (OwnLogbook own = new OwnLogbook(folder)) {
            own.save(new AddCar(), "name", "7").orThrow();
            own.save(
                            new AddEngine(),
                            "number",
                            "H1",
                            "design_name",
                            "Quarrow 2.0",
                            "cylinders",
                            "4",
                            "hours",
                            "9.5",
                            "car",
                            "7")
                    .orThrow();
            own.save(new AddEvent(), "name", "Round 1", "first_day", "sat", "cars_entered", "7")
                    .orThrow();
        }
        String book = folder.resolve("team.witness").toString();
        Shell shell = new Shell(folder);
        assertThat(shell.run("due", book, "--as-of", "2026-03-10").out())
                .contains("Not known, as no limit is recorded: 1")
                .containsPattern("Not known +H1 +car 7");
        JsonNode marks = new ObjectMapper()
                .readTree(shell.run("due", book, "--as-of", "2026-03-10", "--json")
                        .out())
                .get("marks");
        assertThat(marks).hasSize(1);
        assertThat(marks.get(0).get("state").asText()).isEqualTo("not known");
        assertThat(marks.get(0).get("engine").asText()).isEqualTo("H1");
        assertThat(marks.get(0).get("must").asBoolean()).isFalse();
    }

    @Test
    void of_engines_with_limits_only_their_parts_without_one_are_counted() throws IOException {
        Shell shell = new Shell(folder);
        String book = shell.sampleBook();
        String said = shell.run("due", book, "--as-of", "2026-07-08").out();
        assertThat(said).doesNotContain("as no limit is recorded");
        List<String> parts = new ArrayList<>();
        new ObjectMapper()
                .readTree(shell.run("due", book, "--as-of", "2026-07-08", "--json")
                        .out())
                .get("marks")
                .forEach(mark -> {
                    if (mark.get("reason").asText().equals("no limit recorded")) {
                        parts.add(mark.get("part").asText());
                    }
                });
        assertThat(parts).isNotEmpty().doesNotHaveDuplicates();
        assertThat(said).contains("without a recorded limit, not known: " + parts.size());
    }
}
