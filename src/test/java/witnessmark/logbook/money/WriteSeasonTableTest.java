package witnessmark.logbook.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import witnessmark.logbook.port.TableFiles.Cell;
import witnessmark.sample.SampleViews;

/** The table of the sample season told to its end adds up to the sums of its design: 23 639.60 on failures, 62 138 spent. */
class WriteSeasonTableTest {
    @Test
    void the_rows_add_up_to_what_the_ledger_says() {
        List<List<Cell>> rows = WriteSeasonTable.rows(SampleViews.end(), SeasonAsked.USUAL);
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
}
