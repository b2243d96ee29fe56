package witnessmark.desktop.incidents;

import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Texts;

/** One incident on a page, from what was seen to what was decided. */
final class IncidentView {
    private final Texts texts;
    private final IncidentsAsked asked;
    private final Sheet sheet = new Sheet("fillx, hidemode 3, wrap", "[0::,grow,fill]", "");
    private final JLabel mark = Lettering.line("", Styles.SECTION);
    private final JLabel title = Lettering.cutLine("", Styles.SECTION);
    private final JLabel stands = Lettering.line("", Styles.STRONG);
    private final JTextArea facts = Lettering.paragraph("", Styles.NOTE);
    private final JTextArea closed = Lettering.paragraph("", Styles.NOTE);
    private final JTextArea seen = Lettering.paragraph("", Styles.FIELD_LABEL);
    private final JLabel costHeading = Lettering.line("", Styles.SECTION);
    private final CostSheet cost;
    private final JPanel sections =
            new JPanel(new MigLayout("insets 0, gap 12 3, fillx, hidemode 3", "[0:112:,fill][0::,grow,fill][]"));
    private @Nullable PageLines shown;

    IncidentView(SheetTools tools, IncidentsAsked asked) {
        this.texts = tools.texts();
        this.asked = asked;
        this.cost = new CostSheet(tools, record -> {
            PageLines lines = shown;
            if (lines != null) {
                asked.correct().accept(record, lines.id());
            }
        });
        sections.setOpaque(false);
        JPanel head = new JPanel(new MigLayout("insets 0, gap 0, fillx", "[]10[0::,grow,fill]10[]", "[baseline]"));
        head.setOpaque(false);
        head.add(mark);
        head.add(title, "wmin 0");
        head.add(stands);
        sheet.add(head, "growx, wmin 0");
        sheet.add(facts, "growx, wmin 0");
        sheet.add(closed, "growx, wmin 0");
        sheet.add(heading("incidents.section.seen"), "gaptop 8");
        sheet.add(seen, "growx, wmin 0");
        sheet.add(new Hairline(), "growx, gaptop 8");
        sheet.add(costHeading, "gaptop 4");
        sheet.add(cost, "growx, wmin 0");
        sheet.add(sections, "growx, wmin 0");
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
        sections.removeAll();
        lines.sections().forEach(section -> put(section, lines.id()));
        sheet.getAccessibleContext().setAccessibleName(texts.get("incidents.page", lines.mark(), lines.title()));
        sheet.setVisible(true);
        sheet.revalidate();
        sheet.repaint();
        return another;
    }

    private void put(PageLines.Section section, String incident) {
        if (section.rows().isEmpty() && section.none().isEmpty()) {
            return;
        }
        sections.add(new Hairline(), "newline, span 3, growx, wmin 0, gaptop 6");
        sections.add(head(section, incident), "newline, span 3, growx, wmin 0");
        section.rows().forEach(this::put);
        if (section.rows().isEmpty()) {
            sections.add(Lettering.paragraph(section.none(), Styles.QUIET_INK), "newline, span 3, growx, wmin 0");
        }
        if (!section.sum().isEmpty()) {
            sections.add(Lettering.paragraph(section.sum(), Styles.ECHO), "newline, span 3, growx, wmin 0");
        }
    }

    /** The heading of a section, with what adds to it at the right. */
    private JPanel head(PageLines.Section section, String incident) {
        JPanel head = new JPanel(new MigLayout("insets 0, gap 0, fillx", "[0::,grow,fill]8[]", "[baseline]"));
        head.setOpaque(false);
        head.add(Lettering.cutLine(section.heading(), Styles.SECTION), "wmin 0");
        Prefilled add = section.add();
        if (add != null) {
            head.add(Buttons.link(
                    Caption.of(section.addWords()), () -> asked.write().accept(add, incident)));
        }
        return head;
    }

    private void put(PageLines.Row row) {
        JComponent lead =
                row.incident().isEmpty() ? Lettering.cutLine(row.lead(), Styles.STRONG) : link(row, asked.open());
        sections.add(lead, "newline, aligny top, wmin 0");
        sections.add(Lettering.paragraph(row.words(), Styles.FIELD_LABEL), "aligny top, growx, wmin 0");
        sections.add(Lettering.figure(row.figure(), Styles.FIELD_LABEL), "aligny top, alignx trailing");
        if (!row.under().isEmpty()) {
            sections.add(Lettering.paragraph(row.under(), Styles.NOTE), "newline, skip 1, span 2, growx, wmin 0");
        }
    }

    private static JButton link(PageLines.Row row, Consumer<String> open) {
        JButton link = Buttons.link(new Caption(row.lead(), -1), () -> open.accept(row.incident()));
        link.getAccessibleContext().setAccessibleName(row.lead());
        return link;
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

    JPanel sections() {
        return sections;
    }
}
