package witnessmark.desktop.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.swing.JPanel;
import witnessmark.desktop.form.ColumnPane;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.OpenRow;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** What the joints of a build were tightened to and what they pull with: a line each, which opens to how that comes about. */
final class JointsView {
    private final Sheet sheet = new Sheet("fillx, hidemode 3, wrap", "[0::,grow,fill]", "");
    private final Texts texts;
    private final List<OpenRow> rows = new ArrayList<>();
    private final Set<Integer> open = new HashSet<>();
    private List<BenchLines.JointLine> shown = List.of();

    JointsView(Texts texts) {
        this.texts = texts;
        sheet.getAccessibleContext().setAccessibleName(texts.get("bench.joints"));
        sheet.setVisible(false);
    }

    Sheet component() {
        return sheet;
    }

    void show(List<BenchLines.JointLine> joints) {
        if (!joints.equals(shown)) {
            shown = joints;
            open.clear();
            put();
        }
    }

    List<OpenRow> rows() {
        return rows;
    }

    private void put() {
        sheet.removeAll();
        rows.clear();
        sheet.setVisible(!shown.isEmpty());
        sheet.add(Lettering.line(texts.get("bench.joints"), Styles.SECTION));
        for (int i = 0; i < shown.size(); i++) {
            row(i, shown.get(i));
        }
        sheet.add(Lettering.paragraph(texts.get("fit.caution.fasteners"), Styles.NOTE), "growx, wmin 0, gaptop 6");
        sheet.revalidate();
        sheet.repaint();
    }

    private void row(int index, BenchLines.JointLine joint) {
        BenchLines.Stand stand = joint.stand();
        sheet.add(new Hairline(), "growx, wmin 0");
        OpenRow row = new OpenRow(
                "[24!]10[0::,grow,fill]",
                texts.get("bench.answer.about", stand.word(), stand.sentence()),
                () -> toggle(index));
        row.add(Verdicts.mark(stand), "aligny top");
        row.add(Lettering.through(stand.sentence(), Styles.FIELD_LABEL), "growx, wmin 0");
        boolean isOpen = open.contains(index);
        row.getAccessibleContext()
                .setAccessibleDescription(texts.get(isOpen ? "bench.answer.close" : "bench.answer.open"));
        rows.add(row);
        sheet.add(row, OpenRow.LIST);
        if (isOpen) {
            sheet.add(under(joint), "growx, wmin 0, gapleft 34, gapbottom 6");
        }
    }

    /** Opens a joint, or closes it again. */
    void toggle(int index) {
        if (!open.remove(index)) {
            open.add(index);
        }
        put();
        rows.get(index).requestFocusInWindow();
    }

    private JPanel under(BenchLines.JointLine joint) {
        JPanel under = new JPanel(new FormLayout("insets 0, gap 8 2, fillx, wrap", "[0::,grow,fill]"));
        under.setOpaque(false);
        joint.beside().forEach(said -> under.add(Lettering.paragraph(said, Styles.NOTE), "growx, wmin 0"));
        under.add(ColumnPane.steps(BenchLines.rows(texts, joint.column())), "growx, wmin 0");
        return under;
    }
}
