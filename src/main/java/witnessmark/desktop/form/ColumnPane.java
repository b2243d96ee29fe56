package witnessmark.desktop.form;

import java.util.List;
import javax.swing.JPanel;

/** Figures under each other as they are worked out by hand. */
public final class ColumnPane extends JPanel {
    private ColumnPane() {
        super(new FormLayout("insets 0, gap 8 1, fillx", "[0::,grow,fill][]"));
        setOpaque(false);
    }

    /**
     * A line.
     *
     * @param what of which figure, and what it rests on
     * @param figure with its unit
     */
    public record Row(String what, String figure) {}

    /** Lines that are added up, their sum under a line. */
    public static ColumnPane sum(List<Row> rows) {
        ColumnPane column = new ColumnPane();
        for (int i = 0; i < rows.size(); i++) {
            boolean sum = i == rows.size() - 1;
            if (sum) {
                column.add(new Hairline(), "newline, span 2, growx");
            }
            column.row(rows.get(i), sum ? Styles.ECHO : Styles.NOTE);
        }
        return column;
    }

    /** Lines of which each goes on from those before it. */
    public static ColumnPane steps(List<Row> rows) {
        ColumnPane column = new ColumnPane();
        rows.forEach(row -> column.row(row, Styles.NOTE));
        return column;
    }

    private void row(Row row, String style) {
        add(Lettering.paragraph(row.what(), style), "newline, growx, wmin 0, aligny top");
        add(Lettering.figure(row.figure(), Styles.ECHO), "aligny top, alignx right");
    }
}
