package witnessmark.launch.seasonsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import witnessmark.report.SeasonSheet;

/** What stands on a season's pages as text: every heading and sum, and of each table its first lines. */
final class SheetText {
    private static final int LINES = 3;

    private SheetText() {}

    static String of(SeasonSheet sheet) {
        List<String> lines =
                new ArrayList<>(List.of(sheet.title(), sheet.logbook(), sheet.day(), sheet.printed(), sheet.caution()));
        for (SeasonSheet.Part part : sheet.parts()) {
            lines.add("");
            lines.add("=== " + part.title() + " | " + part.board());
            lines.addAll(part.under());
            part.sections().forEach(section -> add(lines, section));
        }
        return String.join("\n", lines) + "\n";
    }

    private static void add(List<String> lines, SeasonSheet.Section section) {
        lines.add("");
        lines.add("--- " + section.heading());
        lines.add(section.columns().stream().map(SeasonSheet.Column::title).collect(Collectors.joining(" | ")));
        for (int at = 0; at < section.rows().size(); at++) {
            SeasonSheet.Row row = section.rows().get(at);
            if (at < LINES || row.weight() != SeasonSheet.Weight.LINE) {
                lines.add((row.weight() == SeasonSheet.Weight.LINE ? "" : row.weight() + " ")
                        + row.cells().stream().map(SheetText::cell).collect(Collectors.joining(" | ")));
            }
        }
        lines.add(section.rows().size() + " rows");
        lines.addAll(section.notes());
    }

    private static String cell(SeasonSheet.Cell cell) {
        return cell.bar() > 0 ? "#".repeat((int) Math.ceil(cell.bar() * 10)) : String.join(" / ", cell.lines());
    }
}
