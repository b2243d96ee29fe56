package witnessmark.trace.text;

import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The decimal mark and the mark between thousands of a table.
 *
 * @param decimal a point or a comma
 * @param thousands or 0
 * @param doubtful a cell that reads in two ways, when nothing says in which; else null
 */
record Marks(char decimal, char thousands, @Nullable String doubtful) {
    /** Three digits after a single mark, and no zero before it: 1,234. */
    private static final Pattern EITHER = Pattern.compile("[-+]?[1-9]\\d{0,2}([.,])\\d{3}");

    private static final Pattern SMALL = Pattern.compile("[-+]?\\d{1,3}");
    private static final Pattern ZERO = Pattern.compile("[-+]?0+");

    private static final class Evidence {
        private int decimal;
        private int thousands;
        private int either;
        private @Nullable String cell;
    }

    static Marks of(Table table) {
        Evidence comma = new Evidence();
        Evidence point = new Evidence();
        char other = 0;
        for (int i = 0; i < table.width(); i++) {
            List<String> cells =
                    table.column(i).stream().filter(Table::isNumber).toList();
            for (String cell : cells) {
                weigh(cell, comma, point);
                other = other == 0 ? otherThousands(cell) : other;
            }
            bySmallOnes(cells, ',', comma);
            bySmallOnes(cells, '.', point);
        }
        if (comma.decimal > 0 && point.decimal > 0) {
            return comma.decimal > point.decimal
                    ? new Marks(',', other, cell(comma))
                    : new Marks('.', other, cell(point));
        }
        if (comma.decimal > 0) {
            return new Marks(',', point.thousands + point.either > 0 ? '.' : other, null);
        }
        if (point.decimal > 0) {
            return new Marks('.', comma.thousands + comma.either > 0 ? ',' : other, null);
        }
        return undecided(table, comma, point, other);
    }

    private static Marks undecided(Table table, Evidence comma, Evidence point, char other) {
        if (comma.thousands > 0) {
            return new Marks('.', ',', point.either > 0 ? point.cell : null);
        }
        if (point.thousands > 0) {
            return new Marks(',', '.', comma.either > 0 ? comma.cell : null);
        }
        if (comma.either > 0) {
            return new Marks(',', other, comma.cell);
        }
        boolean plain = point.either == 0 || table.delimiter() == ',';
        return new Marks('.', other, plain ? null : point.cell);
    }

    private static String cell(Evidence evidence) {
        return evidence.cell == null ? "" : evidence.cell;
    }

    private static void weigh(String cell, Evidence comma, Evidence point) {
        int lastComma = cell.lastIndexOf(',');
        int lastPoint = cell.lastIndexOf('.');
        if (lastComma >= 0 && lastPoint >= 0) {
            (lastComma > lastPoint ? comma : point).decimal++;
            (lastComma > lastPoint ? point : comma).thousands++;
        } else if (lastComma >= 0) {
            weigh(cell, ',', lastComma, comma);
        } else if (lastPoint >= 0) {
            weigh(cell, '.', lastPoint, point);
        }
    }

    private static void weigh(String cell, char mark, int last, Evidence evidence) {
        if (cell.indexOf(mark) != last) {
            evidence.thousands++;
        } else if (EITHER.matcher(cell).matches()) {
            evidence.either++;
            evidence.cell = evidence.cell == null ? cell : evidence.cell;
        } else {
            evidence.decimal++;
            evidence.cell = cell;
        }
    }

    /** Where figures under a thousand stand without the mark, and those over it with it, it parts thousands. */
    private static void bySmallOnes(List<String> cells, char mark, Evidence evidence) {
        boolean small = false;
        int either = 0;
        for (String cell : cells) {
            if (EITHER.matcher(cell).matches() && cell.indexOf(mark) >= 0) {
                either++;
            } else if (SMALL.matcher(cell).matches() && !ZERO.matcher(cell).matches()) {
                small = true;
            } else if (!ZERO.matcher(cell).matches()) {
                return;
            }
        }
        if (small && either > 0) {
            evidence.thousands += either;
            evidence.either -= either;
        }
    }

    private static char otherThousands(String cell) {
        for (int i = 1; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c == ' ' || c == '\u00a0' || c == '\u202f') {
                return ' ';
            }
            if (c == '\'' || c == '\u2019') {
                return '\'';
            }
        }
        return 0;
    }
}
