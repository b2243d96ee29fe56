package witnessmark.desktop.bench;

import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.FitWords;
import witnessmark.wording.Texts;

/** Figures under each other as they are worked out by hand. */
final class ColumnPane extends JPanel {
    private final transient Texts texts;

    ColumnPane(Texts texts) {
        super(new MigLayout("insets 0, gap 8 1, fillx", "[0::,grow,fill][]"));
        this.texts = texts;
        setOpaque(false);
    }

    /** Lines that are added up, their sum under a line. */
    static ColumnPane sum(Texts texts, List<FitWords.Line> lines) {
        ColumnPane column = new ColumnPane(texts);
        for (int i = 0; i < lines.size(); i++) {
            boolean sum = i == lines.size() - 1;
            if (sum) {
                column.add(new Hairline(), "newline, span 2, growx");
            }
            column.line(lines.get(i), sum ? Styles.ECHO : Styles.NOTE);
        }
        return column;
    }

    /** Lines of which each goes on from those before it. */
    static ColumnPane steps(Texts texts, List<FitWords.Line> lines) {
        ColumnPane column = new ColumnPane(texts);
        lines.forEach(line -> column.line(line, Styles.NOTE));
        return column;
    }

    private void line(FitWords.Line line, String style) {
        add(
                Lettering.paragraph(
                        line.basis().isEmpty()
                                ? line.what()
                                : texts.get("bench.column.line", line.what(), line.basis()),
                        style),
                "newline, growx, wmin 0, aligny top");
        add(Lettering.figure(line.figure(), Styles.ECHO), "aligny top, alignx right");
    }
}
