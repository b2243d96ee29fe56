package witnessmark.desktop.incidents;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.logbook.sheets.Prefilled;

/** Sections of the page, one below the other. */
final class Sections extends JPanel {
    private final transient IncidentsAsked asked;

    Sections(IncidentsAsked asked) {
        super(new FormLayout("insets 0, gap 12 3, fillx, hidemode 3", "[0:112:,fill][0::,grow,fill][]"));
        this.asked = asked;
        setOpaque(false);
    }

    void show(List<PageLines.Section> all) {
        removeAll();
        all.forEach(this::put);
        revalidate();
    }

    private void put(PageLines.Section section) {
        if (section.rows().isEmpty() && section.none().isEmpty()) {
            return;
        }
        add(new Hairline(), "newline, span 3, growx, wmin 0, gaptop 6");
        add(head(section), "newline, span 3, growx, wmin 0");
        section.rows().forEach(this::put);
        if (section.rows().isEmpty()) {
            add(Lettering.paragraph(section.none(), Styles.QUIET_INK), "newline, span 3, growx, wmin 0");
        }
        if (!section.sum().isEmpty()) {
            add(Lettering.paragraph(section.sum(), Styles.ECHO), "newline, span 3, growx, wmin 0");
        }
    }

    /** The heading of a section, with what adds to it at the right. */
    private JPanel head(PageLines.Section section) {
        JPanel head = new JPanel(new FormLayout("insets 0, gap 0, fillx", "[0::,grow,fill]8[]", "[baseline]"));
        head.setOpaque(false);
        head.add(Lettering.cutLine(section.heading(), Styles.SECTION), "wmin 0");
        Prefilled add = section.add();
        if (add != null) {
            head.add(Buttons.link(
                    Caption.of(section.addWords()), () -> asked.write().accept(add)));
        }
        return head;
    }

    private void put(PageLines.Row row) {
        JComponent lead =
                row.incident().isEmpty() ? Lettering.paragraph(row.lead(), Styles.STRONG) : link(row, asked.open());
        add(lead, "newline, aligny top, wmin 0");
        add(Lettering.paragraph(row.words(), Styles.FIELD_LABEL), "aligny top, growx, wmin 0");
        add(Lettering.figure(row.figure(), Styles.FIELD_LABEL), "aligny top, alignx trailing");
        if (!row.under().isEmpty()) {
            add(Lettering.paragraph(row.under(), Styles.NOTE), "newline, skip 1, span 2, growx, wmin 0");
        }
    }

    private static JButton link(PageLines.Row row, Consumer<String> open) {
        JButton link = Buttons.link(new Caption(row.lead(), -1), () -> open.accept(row.incident()));
        link.getAccessibleContext().setAccessibleName(row.lead());
        return link;
    }
}
