package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.logbook.port.TableFiles.Cell;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Tables read back by the CSV reader of a general-purpose library. Which first letters make a spreadsheet reckon: OWASP, "CSV
 * Injection" (= + - @, tab, carriage return).
 */
class CsvTableFilesTest {
    private static final List<String> HEADINGS = List.of("row", "what", "amount");

    @TempDir
    Path folder;

    private static List<List<Cell>> row(String what, String amount) {
        return List.of(List.of(Cell.figure("cost"), Cell.words(what), Cell.figure(amount)));
    }

    private List<String> back(String what, String amount) throws IOException {
        Path file = folder.resolve("t.csv");
        new CsvTableFiles(new UnsyncedDisk())
                .write(HEADINGS, row(what, amount), file)
                .orThrow();
        try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(file)) {
            return csv.stream().toList().get(1).getFields();
        }
    }

    @Test
    void words_that_would_be_reckoned_are_told_to_be_text_and_figures_stay_figures() throws IOException {
        for (String what : List.of("=1+1", "+44 20", "-16 back", "@SUM(A1)", "\tx", "\rx", "\nx")) {
            assertThat(back(what, "-16.50")).containsExactly("cost", "'" + what, "-16.50");
        }
        assertThat(back("skim, \"0.12\"\nand weld", "240.00"))
                .containsExactly("cost", "skim, \"0.12\"\nand weld", "240.00");
        assertThat(back("", "0.00")).containsExactly("cost", "", "0.00");
    }

    @Test
    void a_table_takes_the_place_of_an_older_one_and_of_nothing_else() throws IOException {
        Path file = folder.resolve("t.csv");
        back("old", "1.00");
        assertThat(back("new", "2.00")).contains("new");
        Files.writeString(file, "letters to my aunt");
        assertThat(new CsvTableFiles(new UnsyncedDisk())
                        .write(HEADINGS, row("x", "1.00"), file)
                        .problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.FILE_EXISTS);
        assertThat(file).hasContent("letters to my aunt");
    }
}
