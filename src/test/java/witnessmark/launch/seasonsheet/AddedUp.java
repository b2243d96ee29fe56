package witnessmark.launch.seasonsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import witnessmark.report.PdfRows;

/** Adds the printed lines up as somebody with the paper in hand does, and holds each printed sum against them. */
final class AddedUp {
    private static final Pattern TABLE = Pattern.compile("([A-H][0-9]*)\\. .*");
    private static final Pattern NUMBER = Pattern.compile("[0-9\u2009]+");

    private final Map<String, BigDecimal> totals = new HashMap<>();
    private final Map<String, BigDecimal> sums = new HashMap<>();
    private final Set<Integer> numbers = new TreeSet<>();
    private final List<String> wrong = new ArrayList<>();
    private String table = "";
    private BigDecimal lines = BigDecimal.ZERO;
    private BigDecimal groups = BigDecimal.ZERO;

    private AddedUp() {}

    /** @return what stands on the pages, once every sum on them is that of its lines */
    static AddedUp of(PdfRows printed) {
        AddedUp added = new AddedUp();
        printed.all().forEach(added::read);
        assertThat(added.wrong).isEmpty();
        return added;
    }

    private void read(List<String> row) {
        Matcher heading = TABLE.matcher(row.get(0));
        if (row.size() == 1 && heading.matches()) {
            begin(heading.group(1));
        }
        int last = row.size() - 1;
        BigDecimal figure = last == 0 ? null : PdfRows.figure(row.get(last)).orElse(null);
        if (table.isEmpty() || figure == null) {
            return;
        }
        if (last == 1) {
            sum(row.get(0), figure);
        } else if (NUMBER.matcher(row.get(0)).matches()) {
            numbers.add(Integer.parseInt(row.get(0).replace("\u2009", "")));
            lines = lines.add(figure);
        } else {
            lines = lines.add(figure); // budget and what came in: a day, what for, an amount
        }
    }

    /** A heading that goes on to another page begins nothing. */
    private void begin(String letter) {
        if (!letter.equals(table)) {
            table = letter;
            lines = BigDecimal.ZERO;
            groups = BigDecimal.ZERO;
        }
    }

    private void sum(String words, BigDecimal printed) {
        boolean total = words.toLowerCase(java.util.Locale.ROOT).endsWith("together");
        BigDecimal added = total ? groups.add(lines) : lines;
        if (added.compareTo(printed) != 0) {
            wrong.add(table + " " + words + ": printed " + printed + ", added up " + added);
        }
        if (total) {
            totals.put(table, printed);
        } else {
            sums.merge(table + " " + words, printed, BigDecimal::add);
            groups = groups.add(printed);
        }
        lines = BigDecimal.ZERO;
    }

    /** What a table comes to: {@code A1}, {@code B}; nothing where there is none. */
    BigDecimal total(String letter) {
        return totals.getOrDefault(letter, BigDecimal.ZERO);
    }

    /** The sum of some lines of a table: {@code A1}, {@code Cash out}; nothing where there is none. */
    BigDecimal sum(String letter, String words) {
        return sums.getOrDefault(letter + " " + words, BigDecimal.ZERO);
    }

    /** What all failures come to. */
    BigDecimal failures() {
        return totals.entrySet().stream()
                .filter(each -> each.getKey().startsWith("A"))
                .map(Map.Entry::getValue)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The numbers of all costs on the pages. */
    Set<Integer> numbers() {
        return numbers;
    }
}
