package witnessmark.logbook.bank;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.BankLine;
import witnessmark.domain.StatementForm;

/**
 * What a statement holds, read by a form.
 *
 * @param form how its columns were read
 * @param fresh lines the logbook does not have
 * @param known how many it has already
 * @param unread rows that could not be read, by their line and what stands there
 * @param odd lines that are not of the table
 * @param firstDay the first day of it that could be read, or null where none could
 */
public record Statement(
        StatementForm form,
        List<BankLine> fresh,
        int known,
        List<Unread> unread,
        List<Long> odd,
        @Nullable DayRead firstDay) {
    public Statement {
        fresh = List.copyOf(fresh);
        unread = List.copyOf(unread);
        odd = List.copyOf(odd);
    }

    /**
     * How a day was read.
     *
     * @param written as the bank wrote it
     * @param day what it was read as
     */
    public record DayRead(String written, LocalDate day) {}

    /**
     * A row that could not be read.
     *
     * @param line the line it begins on
     * @param heading of the column that could not be read
     * @param text what stands there
     */
    public record Unread(long line, String heading, String text) {}
}
