package witnessmark.desktop.incidents;

import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.cases.CaseView;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** One incident on a page, from what was seen to what was decided. */
final class IncidentView {
    private final Texts texts;
    private final Sheet sheet = new Sheet("fillx, hidemode 3, wrap", "[0::,grow,fill]", "");
    private final JLabel mark = Lettering.line("", Styles.SECTION);
    private final JLabel title = Lettering.cutLine("", Styles.SECTION);
    private final JLabel stands = Lettering.line("", Styles.STRONG);
    private final JTextArea facts = Lettering.paragraph("", Styles.NOTE);
    private final JTextArea closed = Lettering.paragraph("", Styles.NOTE);
    private final JTextArea seen = Lettering.paragraph("", Styles.FIELD_LABEL);
    private final JLabel costHeading = Lettering.line("", Styles.SECTION);
    private final JButton addCost;
    private final CostSheet cost;
    private final CaseView cases;
    private final Sections holds;
    private final Sections causes;
    private final Sections sections;
    private @Nullable PageLines shown;

    IncidentView(SheetTools tools, IncidentsAsked asked, CaseView cases) {
        this.texts = tools.texts();
        this.cases = cases;
        this.holds = new Sections(asked);
        this.causes = new Sections(asked);
        this.sections = new Sections(asked);
        this.cost = new CostSheet(tools, asked.correct());
        this.addCost = Buttons.link(Caption.of(texts.get("incidents.add.cost")), () -> {
            PageLines now = shown;
            if (now != null) {
                asked.write().accept(now.addCost());
            }
        });
        JPanel head = new JPanel(new FormLayout("insets 0, gap 0, fillx", "[]10[0::,grow,fill]10[]", "[baseline]"));
        head.setOpaque(false);
        head.add(mark);
        head.add(title, "wmin 0");
        head.add(stands);
        sheet.add(head, "growx, wmin 0");
        sheet.add(facts, "growx, wmin 0");
        sheet.add(closed, "growx, wmin 0");
        sheet.add(heading("incidents.section.seen"), "gaptop 8");
        sheet.add(seen, "growx, wmin 0");
        sheet.add(cases.way(), "growx, wmin 0, gaptop 4");
        sheet.add(holds, "growx, wmin 0");
        sheet.add(cases.evidence(), "growx, wmin 0");
        sheet.add(causes, "growx, wmin 0");
        sheet.add(cases.prompts(), "growx, wmin 0");
        sheet.add(new Hairline(), "growx, gaptop 8");
        sheet.add(costHeading, "split 2, growx, pushx, wmin 0, gaptop 4");
        sheet.add(addCost, "growx 0");
        sheet.add(cost, "growx, wmin 0");
        sheet.add(sections, "growx, wmin 0");
        sheet.add(cases.beside(), "growx, wmin 0");
        sheet.setVisible(false);
    }

    private JLabel heading(String key) {
        return Lettering.line(texts.get(key), Styles.SECTION);
    }

    Sheet component() {
        return sheet;
    }

    CostSheet cost() {
        return cost;
    }

    /** Nothing is chosen. */
    void none() {
        shown = null;
        sheet.setVisible(false);
    }

    /** @return whether it is of another incident than what was shown */
    boolean show(PageLines lines) {
        if (lines.equals(shown)) {
            return false;
        }
        boolean another = shown == null || !shown.id().equals(lines.id());
        shown = lines;
        mark.setText(lines.mark());
        title.setText(lines.title());
        stands.setText(lines.stands());
        Styles.as(lines.state().style(), stands);
        facts.setText(lines.facts());
        closed.setText(lines.closed());
        closed.setVisible(!lines.closed().isEmpty());
        seen.setText(lines.seen().isBlank() ? texts.get("incidents.none.seen") : lines.seen());
        costHeading.setText(texts.get("incidents.section.cost", lines.currency()));
        cost.show(lines.columns(), lines.span());
        cases.show(lines.investigation());
        holds.show(lines.holds());
        causes.show(lines.causes());
        sections.show(lines.sections());
        sheet.getAccessibleContext().setAccessibleName(texts.get("incidents.page", lines.mark(), lines.title()));
        sheet.setVisible(true);
        sheet.revalidate();
        sheet.repaint();
        return another;
    }

    /** Puts the photos under what was seen. */
    void with(JComponent photos) {
        for (int i = 0; i < sheet.getComponentCount(); i++) {
            if (sheet.getComponent(i) == seen) {
                sheet.add(photos, "growx, wmin 0, gaptop 8", i + 1);
                return;
            }
        }
    }
}
