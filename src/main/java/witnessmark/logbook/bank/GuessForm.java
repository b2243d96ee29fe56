package witnessmark.logbook.bank;

import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import witnessmark.cost.HomeCurrency;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.StatementForm;
import witnessmark.logbook.port.StatementRows;

/**
 * Says how the columns of a statement are to be read: as the last with the same headings was, or else by what stands in
 * them. A guess is shown before anything is taken in.
 */
public final class GuessForm {
    private static final int TENTH = 10;
    private static final int FEW = 4;

    private static final int REFERENCE_LETTERS = 4;

    private final StatementRows rows;
    private final Currency own;
    private final char decimal;
    private final Set<Integer> taken = new HashSet<>();

    private GuessForm(StatementRows rows, Currency own) {
        this.rows = rows;
        this.own = own;
        this.decimal = decimal(rows);
    }

    /**
     * A form for a table; empty where no column holds days, or none holds amounts.
     *
     * @param account what the form is called when it is new
     */
    public static Optional<StatementForm> of(Facts facts, StatementRows rows, String account) {
        String headings = String.join("\n", rows.headings());
        Optional<StatementForm> known =
                facts.of(StatementForm.class).where(form -> form.headings().equals(headings)).stream()
                        .map(Entry::fact)
                        .reduce((earlier, later) -> later);
        return known.isPresent() ? known : new GuessForm(rows, HomeCurrency.of(facts)).guess(account, headings);
    }

    private Optional<StatementForm> guess(String account, String headings) {
        Optional<Day> day = day();
        if (day.isEmpty()) {
            return Optional.empty();
        }
        taken.add(day.get().column());
        List<Integer> currencies = columns(text -> HomeCurrency.named(text).isPresent());
        currencies.stream().findFirst().ifPresent(taken::add);
        Currency currency = currencies.isEmpty()
                ? own
                : HomeCurrency.named(rows.rows().get(0).fields().get(currencies.get(0)))
                        .orElse(own);
        List<Integer> amounts = columns(text -> amount(text) || digits(text));
        Optional<Integer> signed = amounts.stream().filter(this::isSigned).findFirst();
        Optional<List<Integer>> pair = signed.isPresent() ? Optional.empty() : pair();
        Optional<Integer> only = signed.or(() -> pair.isPresent()
                ? Optional.empty()
                : amounts.stream().filter(this::hasDecimals).findFirst());
        if (only.isEmpty() && pair.isEmpty()) {
            return Optional.empty();
        }
        only.ifPresent(taken::add);
        pair.ifPresent(taken::addAll);
        Optional<Integer> reference = reference();
        reference.ifPresent(taken::add);
        List<String> texts = IntStream.range(0, rows.headings().size())
                .filter(column -> !taken.contains(column) && isText(column))
                .mapToObj(this::heading)
                .toList();
        return Optional.of(new StatementForm(
                account,
                headings,
                heading(day.get().column()),
                day.get().pattern(),
                only.map(this::heading).orElse(""),
                pair.map(both -> heading(both.get(0))).orElse(""),
                pair.map(both -> heading(both.get(1))).orElse(""),
                String.join("\n", texts),
                reference.map(this::heading).orElse(""),
                currencies.isEmpty() ? "" : heading(currencies.get(0)),
                currency.getCurrencyCode(),
                String.valueOf(decimal)));
    }

    /** The first column that is days, by the pattern that reads most of them; of equal ones the more usual. */
    private Optional<Day> day() {
        for (int column = 0; column < rows.headings().size(); column++) {
            String best = "";
            long most = 0;
            for (String pattern : BankDays.PATTERNS) {
                long read = present(column).stream()
                        .filter(text -> BankDays.read(text, pattern).isPresent())
                        .count();
                if (read > most) {
                    most = read;
                    best = pattern;
                }
            }
            if (nearlyAll(most, rows.rows().size())) {
                return Optional.of(new Day(column, best));
            }
        }
        return Optional.empty();
    }

    /** Two columns of amounts of which each row fills one: money out is the one with more in it. */
    private Optional<List<Integer>> pair() {
        List<Integer> some = IntStream.range(0, rows.headings().size())
                .filter(column -> !taken.contains(column) && isSparse(column))
                .boxed()
                .toList();
        for (int one : some) {
            for (int other : some) {
                if (one < other && rows.rows().stream().allMatch(row -> filled(row, one) != filled(row, other))) {
                    boolean firstIn = says(one, "credit|in$|paid in|haben|gutschrift|income|received")
                            || says(other, "debit|out$|paid out|soll|lastschrift|spent|withdraw");
                    return Optional.of(firstIn ? List.of(one, other) : List.of(other, one));
                }
            }
        }
        return Optional.empty();
    }

    private boolean says(int column, String words) {
        return java.util.regex.Pattern.compile(words, java.util.regex.Pattern.CASE_INSENSITIVE)
                .matcher(heading(column))
                .find();
    }

    private static boolean filled(StatementRows.Row row, int column) {
        return !row.fields().get(column).isEmpty();
    }

    private boolean isSparse(int column) {
        List<String> present = present(column);
        return !present.isEmpty()
                && present.size() < rows.rows().size()
                && present.stream().allMatch(this::amount);
    }

    /** A column of numbers that are all different, as a bank gives its bookings. */
    private Optional<Integer> reference() {
        return IntStream.range(0, rows.headings().size())
                .filter(column -> !taken.contains(column))
                .filter(column -> {
                    List<String> present = present(column);
                    return present.size() == rows.rows().size()
                            && present.stream().distinct().count() == present.size()
                            && present.stream()
                                    .allMatch(text -> text.length() >= REFERENCE_LETTERS
                                            && text.matches("[A-Za-z0-9/._-]+")
                                            && text.matches(".*[0-9].*"));
                })
                .boxed()
                .findFirst();
    }

    private boolean isText(int column) {
        return present(column).stream().anyMatch(text -> text.matches(".*\\p{L}.*"));
    }

    private boolean isSigned(int column) {
        return present(column).stream().anyMatch(text -> text.matches(".*[-−(].*|.*(?i)(dr|cr| s| h)$"));
    }

    private boolean hasDecimals(int column) {
        return present(column).stream().anyMatch(text -> text.indexOf(decimal) >= 0);
    }

    private List<Integer> columns(Predicate<String> kind) {
        List<Integer> columns = new ArrayList<>();
        for (int column = 0; column < rows.headings().size(); column++) {
            if (!taken.contains(column) && is(column, kind)) {
                columns.add(column);
            }
        }
        return columns;
    }

    private boolean is(int column, Predicate<String> kind) {
        List<String> present = present(column);
        return nearlyAll(present.size(), rows.rows().size())
                && nearlyAll(present.stream().filter(kind).count(), present.size());
    }

    /** All but one in ten; of few, all but one. */
    private static boolean nearlyAll(long some, int all) {
        int spoilt = all < FEW ? 0 : Math.max(1, all / TENTH);
        return some > 0 && some >= all - spoilt;
    }

    private boolean amount(String text) {
        return BankAmount.read(text, decimal, own).isPresent();
    }

    private static boolean digits(String text) {
        return text.matches("[-+]?[0-9]+");
    }

    private List<String> present(int column) {
        return rows.rows().stream()
                .map(row -> row.fields().get(column))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    private String heading(int column) {
        return rows.headings().get(column);
    }

    /** What stands before one or two last digits, most often in the whole table. */
    private static char decimal(StatementRows rows) {
        long commas = count(rows, ",");
        long points = count(rows, "\\.");
        return commas > points ? ',' : '.';
    }

    private static long count(StatementRows rows, String sign) {
        return rows.rows().stream()
                .flatMap(row -> row.fields().stream())
                .filter(text -> text.matches("[-+(−€£$ ]*[0-9][0-9.,' ]*" + sign + "[0-9]{1,2}[-) A-Za-z€£$]*"))
                .filter(text -> !text.matches("[0-9]{1,2}\\.[0-9]{1,2}\\..*"))
                .count();
    }

    private record Day(int column, String pattern) {}
}
