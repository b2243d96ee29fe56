package witnessmark.desktop.speed;

import java.util.List;
import javax.swing.JPanel;
import witnessmark.desktop.form.ColumnPane;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamMark;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.FitWords;
import witnessmark.wording.Texts;

/** The answer first, then how it comes about, what it rests on and what it lacks. */
final class SpeedView {
    private static final String LINE = "growx, wmin 0";

    private final Texts texts;
    private final Sheet sheet = new Sheet("fillx, hidemode 3, wrap", "[0::,grow,fill]", "");

    SpeedView(Texts texts) {
        this.texts = texts;
        sheet.getAccessibleContext().setAccessibleName(texts.get("speed.title"));
    }

    Sheet component() {
        return sheet;
    }

    void show(SpeedLines lines) {
        sheet.removeAll();
        sheet.add(Lettering.line(texts.get("speed.title"), Styles.SECTION));
        lines.tried().forEach(line -> sheet.add(Lettering.paragraph(line, Styles.ECHO), LINE));
        sheet.add(head(lines), LINE);
        paragraphs("", lines.beside());
        paragraphs("speed.section.rings", lines.rings());
        column(lines.column());
        paragraphs("speed.section.rests", List.of(lines.conditions()));
        paragraphs("", lines.missing());
        paragraphs("speed.section.loads", lines.loads());
        paragraphs("speed.section.marks", lines.marks());
        sheet.add(Lettering.paragraph(texts.get("speed.caution"), Styles.NOTE), LINE + ", gaptop 8");
        sheet.revalidate();
        sheet.repaint();
    }

    private JPanel head(SpeedLines lines) {
        JPanel head = new JPanel(new FormLayout("insets 4 0 4 0, gap 10, fillx", "[24!][0::,grow,fill]"));
        head.setOpaque(false);
        SeamState state = lines.state();
        SeamMark mark = new SeamMark(state == null ? SeamState.SCRAP : state, lines.word(), lines.headline());
        if (state == null) {
            mark.setIcon(null);
        }
        head.add(mark, "aligny top");
        head.add(Lettering.paragraph(lines.headline(), Styles.FIELD_LABEL), LINE);
        return head;
    }

    private void paragraphs(String heading, List<String> lines) {
        if (!lines.isEmpty() && !heading.isEmpty()) {
            sheet.add(Lettering.line(texts.get(heading), Styles.ECHO), "gaptop 8");
        }
        lines.forEach(line -> sheet.add(Lettering.paragraph(line, Styles.NOTE), LINE));
    }

    private void column(List<FitWords.Line> lines) {
        if (!lines.isEmpty()) {
            sheet.add(Lettering.line(texts.get("speed.section.column"), Styles.ECHO), "gaptop 8");
            sheet.add(
                    ColumnPane.sum(lines.stream()
                            .map(line -> new ColumnPane.Row(
                                    line.basis().isEmpty()
                                            ? line.what()
                                            : texts.get("bench.column.line", line.what(), line.basis()),
                                    line.figure()))
                            .toList()),
                    LINE);
        }
    }
}
