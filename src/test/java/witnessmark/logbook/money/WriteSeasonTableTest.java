package witnessmark.logbook.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Facts;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.View;
import witnessmark.logbook.port.TableFiles.Cell;
import witnessmark.sample.SampleBooks;

/** The table of the sample season told to its end adds up to the sums of its design: 23 639.60 on failures, 62 138 spent. */
class WriteSeasonTableTest {
    @Test
    void the_rows_add_up_to_what_the_ledger_says() throws IOException {
        List<List<Cell>> rows = WriteSeasonTable.rows(end(), SeasonAsked.USUAL);
        assertThat(sum(rows, "cash").add(sum(rows, "labour")).add(sum(rows, "missed")))
                .isEqualByComparingTo("23639.60");
        assertThat(sum(rows, "cash")
                        .add(sum(rows, "missed"))
                        .add(sum(rows, "spoiled"))
                        .add(sum(rows, "running"))
                        .add(sum(rows, "kept")))
                .isEqualByComparingTo("62138.00");
        assertThat(rows.stream()
                        .filter(row -> row.get(0).text().equals("budget"))
                        .map(WriteSeasonTableTest::amount)
                        .reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo("51236.00");
        assertThat(rows).allSatisfy(row -> assertThat(row).hasSize(18));
    }

    private static BigDecimal sum(List<List<Cell>> rows, String countedAs) {
        return rows.stream()
                .filter(row ->
                        row.get(0).text().equals("cost") && row.get(4).text().equals(countedAs))
                .map(WriteSeasonTableTest::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal amount(List<Cell> row) {
        return new BigDecimal(row.get(8).text());
    }

    private static View end() throws IOException {
        LocalDate day = LocalDate.of(2026, 12, 18);
        ZoneId zone = ZoneId.of("Europe/London");
        CsvSeasonFolders folders = new CsvSeasonFolders();
        Facts facts =
                Facts.none().with(folders.read(SampleBooks.FOLDER, Facts.none()).orThrow());
        try (Stream<Path> later = Files.list(SampleBooks.FOLDER.resolve("later"))) {
            for (Path chapter : later.filter(Files::isDirectory).sorted().toList()) {
                facts = facts.with(folders.read(chapter, facts).orThrow());
            }
        }
        return new View(facts, day, zone, LifeLedger.of(facts, new AsOf(day, zone)), false);
    }
}
