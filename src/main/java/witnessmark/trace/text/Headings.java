package witnessmark.trace.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What stands above the figures.
 *
 * @param names of the columns; {@code column 1} and so on where there are none
 * @param units as written, empty where none is
 * @param named whether the file names its columns
 * @param comment what lines begin with that are no rows; empty for nothing
 * @param said lines above the headings, name to value
 */
record Headings(List<String> names, List<String> units, boolean named, String comment, Map<String, String> said) {
    private static final String[] COMMENTS = {"#", "//", "%", "!"};
    private static final int LOOKED_UP = 6;
    private static final int MOST_SAID = 64;
    private static final int LONGEST = 200;

    static Headings of(List<String> lines, Table table) {
        String comment = comment(lines, table);
        int names = -1;
        int units = -1;
        for (int line = table.first() - 1, up = 0; line >= 0 && up < LOOKED_UP; line--, up++) {
            List<String> cells = cells(lines.get(line), table, comment);
            if (!fits(cells, table)) {
                if (lines.get(line).isBlank()) {
                    continue;
                }
                break;
            }
            if (units < 0 && areUnits(cells)) {
                units = line;
            } else {
                names = line;
                break;
            }
        }
        if (names < 0 && units >= 0 && !mostlyUnits(cells(lines.get(units), table, comment))) {
            names = units;
            units = -1;
        }
        return made(lines, table, comment, names, units);
    }

    private static Headings made(List<String> lines, Table table, String comment, int names, int units) {
        List<String> named = new ArrayList<>();
        List<String> in = new ArrayList<>();
        List<String> above = names < 0 ? List.of() : cells(lines.get(names), table, comment);
        List<String> row = units < 0 ? List.of() : cells(lines.get(units), table, comment);
        for (int i = 0; i < table.width(); i++) {
            String cell = i < above.size() ? above.get(i) : "";
            UnitWords.Named apart = UnitWords.apart(cell);
            String unit = i < row.size() ? UnitWords.unbracketed(row.get(i)) : "";
            named.add(shortened(apart.heading().isEmpty() ? "column " + (i + 1) : apart.heading()));
            in.add(UnitWords.says(unit) ? unit : apart.unit());
        }
        int end = names >= 0 ? names : units >= 0 ? units : table.first();
        return new Headings(named, in, names >= 0, comment, said(lines.subList(0, end), table, comment));
    }

    private static String shortened(String heading) {
        return heading.length() > LONGEST ? heading.substring(0, LONGEST) : heading;
    }

    private static String comment(List<String> lines, Table table) {
        for (String mark : COMMENTS) {
            if (lines.subList(0, table.first()).stream()
                    .anyMatch(line -> line.strip().startsWith(mark))) {
                return mark;
            }
        }
        return "";
    }

    private static List<String> cells(String line, Table table, String comment) {
        String text = line.strip();
        boolean marked = !comment.isEmpty() && text.startsWith(comment);
        return HeadLines.cells(marked ? text.substring(comment.length()) : line, table.delimiter());
    }

    /** As wide as the figures, give or take a delimiter at the end, and hardly any figure in it. */
    private static boolean fits(List<String> cells, Table table) {
        int texts = 0;
        int figures = 0;
        for (String cell : cells) {
            texts += !cell.isEmpty() && !Table.isFigure(cell) ? 1 : 0;
            figures += Table.isFigure(cell) ? 1 : 0;
        }
        int wide = Math.abs(cells.size() - table.width());
        return texts > 0 && texts > figures && wide <= (table.width() > 2 ? 1 : 0);
    }

    private static boolean areUnits(List<String> cells) {
        int says = 0;
        int any = 0;
        for (String cell : cells) {
            any += UnitWords.any(cell) ? 1 : 0;
            says += UnitWords.says(cell) ? 1 : 0;
        }
        return says > 0 && any * 3 >= cells.size() * 2;
    }

    /** Of a single row above figures: units and no names, such as s;rpm;bar. Names such as t;n;v read as both. */
    private static boolean mostlyUnits(List<String> cells) {
        return cells.stream()
                .noneMatch(cell -> Channels.isTime(cell) || Channels.of(cell).isPresent());
    }

    private static Map<String, String> said(List<String> lines, Table table, String comment) {
        Map<String, String> said = new LinkedHashMap<>();
        for (String line : lines) {
            String text = line.strip();
            text = !comment.isEmpty() && text.startsWith(comment) ? text.substring(comment.length()) : text;
            HeadLine.of(text, table.delimiter())
                    .filter(found -> said.size() < MOST_SAID)
                    .ifPresent(found -> said.putIfAbsent(shortened(found.name()), shortened(found.value())));
        }
        return said;
    }
}
