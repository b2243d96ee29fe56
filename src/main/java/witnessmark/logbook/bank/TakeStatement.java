package witnessmark.logbook.bank;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.HomeCurrency;
import witnessmark.domain.BankLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Standing;
import witnessmark.domain.StatementForm;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.StatementRows;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Money;

/**
 * Takes the lines of a statement into the logbook. A line that reads the same as one that is there (account, day, amount,
 * words and number) is the same line; of those that read the same on one statement, as many are kept as it has.
 */
public final class TakeStatement {
    private final Facts facts;
    private final StatementRows rows;
    private final StatementForm form;
    private final String account;
    private final List<Statement.Unread> unread = new ArrayList<>();

    private TakeStatement(Facts facts, StatementRows rows, StatementForm form, String account) {
        this.facts = facts;
        this.rows = rows;
        this.form = form;
        this.account = account;
    }

    /**
     * Reads a statement by a form; writes nothing.
     *
     * @param account which account or book it is of
     */
    public static Statement read(Facts facts, StatementRows rows, StatementForm form, String account) {
        return new TakeStatement(facts, rows, form, account).read();
    }

    /**
     * Writes what is new, and how its columns are read, in one change.
     *
     * @param why in words, for the history
     */
    public static Outcome<Written> write(Desk desk, Ids ids, Statement statement, String why) {
        List<Entry<?>> entries = new ArrayList<>();
        for (BankLine line : statement.fresh()) {
            entries.add(new Entry<BankLine>(ids.next(), line, Standing.IN_FORCE, null, 1));
        }
        StatementForm form = statement.form();
        Optional<Entry<StatementForm>> same =
                desk.logbook().facts().of(StatementForm.class).named(form.name());
        if (same.isEmpty()) {
            entries.add(new Entry<StatementForm>(ids.next(), form, Standing.IN_FORCE, null, 1));
        } else if (!same.get().fact().equals(form)) {
            entries.add(new Entry<>(
                    same.get().id(), form, Standing.IN_FORCE, null, same.get().rev() + 1));
        }
        return desk.write(why, entries);
    }

    private Statement read() {
        Set<BankLine> there = facts.of(BankLine.class)
                .inForce()
                .map(entry -> plain(entry.fact()))
                .collect(Collectors.toSet());
        Map<BankLine, Integer> met = new HashMap<>();
        List<BankLine> fresh = new ArrayList<>();
        int known = 0;
        for (StatementRows.Row row : rows.rows()) {
            Optional<BankLine> read = line(row);
            if (read.isEmpty()) {
                continue;
            }
            BankLine numbered = numbered(read.get(), met.merge(read.get(), 1, Integer::sum));
            if (there.contains(plain(numbered))) {
                known++;
            } else {
                fresh.add(numbered);
            }
        }
        return new Statement(form, fresh, known, unread, rows.odd(), firstDay());
    }

    private Statement.@Nullable DayRead firstDay() {
        for (StatementRows.Row row : rows.rows()) {
            String written = text(row, form.dayColumn());
            Optional<LocalDate> day = BankDays.read(written, form.dayPattern());
            if (day.isPresent()) {
                return new Statement.DayRead(written, day.get());
            }
        }
        return null;
    }

    private Optional<BankLine> line(StatementRows.Row row) {
        Optional<LocalDate> day = BankDays.read(text(row, form.dayColumn()), form.dayPattern());
        if (day.isEmpty()) {
            return unread(row, form.dayColumn());
        }
        String code = form.currencyColumn().isEmpty() ? form.currency() : text(row, form.currencyColumn());
        Optional<Currency> currency = HomeCurrency.named(code);
        if (currency.isEmpty()) {
            return unread(row, form.currencyColumn());
        }
        Optional<Money> amount = amount(row, currency.get());
        return amount.isEmpty()
                ? Optional.empty()
                : Optional.of(new BankLine(
                        account,
                        day.get(),
                        amount.get(),
                        words(row),
                        text(row, form.referenceColumn()),
                        1,
                        rows.file(),
                        ""));
    }

    private Optional<Money> amount(StatementRows.Row row, Currency currency) {
        char decimal = form.decimalSign().isEmpty() ? '.' : form.decimalSign().charAt(0);
        String column = form.amountColumn();
        boolean out = false;
        if (column.isEmpty()) {
            out = text(row, form.inColumn()).isEmpty();
            column = out ? form.outColumn() : form.inColumn();
        }
        Optional<Money> read = BankAmount.read(text(row, column), decimal, currency);
        if (read.isEmpty()) {
            unread(row, column);
        }
        boolean turn = out && read.isPresent() && read.get().minor() > 0;
        return turn ? read.map(Money::negated) : read;
    }

    private <T> Optional<T> unread(StatementRows.Row row, String column) {
        unread.add(new Statement.Unread(row.line(), column, text(row, column)));
        return Optional.empty();
    }

    private String words(StatementRows.Row row) {
        return form.textColumns()
                .lines()
                .map(column -> text(row, column))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private String text(StatementRows.Row row, String column) {
        int at = rows.headings().indexOf(column);
        return at < 0 ? "" : row.fields().get(at);
    }

    private static BankLine numbered(BankLine line, int nth) {
        return new BankLine(
                line.account(),
                line.day(),
                line.amount(),
                line.text(),
                line.reference(),
                nth,
                line.source(),
                line.aside());
    }

    /** What makes two lines the same. */
    private static BankLine plain(BankLine line) {
        return new BankLine(
                line.account(), line.day(), line.amount(), line.text(), line.reference(), line.nth(), "", "");
    }
}
