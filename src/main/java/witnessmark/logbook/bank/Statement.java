package witnessmark.logbook.bank;

import java.util.List;
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
 */
public record Statement(StatementForm form, List<BankLine> fresh, int known, List<Unread> unread, List<Long> odd) {
    public Statement {
        fresh = List.copyOf(fresh);
        unread = List.copyOf(unread);
        odd = List.copyOf(odd);
    }

    /**
     * A row that could not be read.
     *
     * @param line the line it begins on
     * @param heading of the column that could not be read
     * @param text what stands there
     */
    public record Unread(long line, String heading, String text) {}
}
