package witnessmark.desktop.season;

import javax.swing.JPanel;
import javax.swing.JTextArea;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The season in a sentence, what the total takes in and rests on, and the season's own figures beside it. */
final class SeasonHead {
    private final Sheet sheet = new Sheet("fillx", "[0::,grow,fill]36[250::]", "");
    private final JTextArea finding = Lettering.paragraph("", Styles.SECTION);
    private final JPanel notes = new JPanel(new FormLayout("insets 0, gap 0 3, fillx, wrap", "[0::,grow,fill]"));
    private final JPanel money = new JPanel(new FormLayout("insets 0, gap 14 2, fillx, wrap 2", "[grow,fill][]"));
    private final SwitchBoxes boxes;

    SeasonHead(Texts texts, Runnable changed) {
        boxes = new SwitchBoxes(texts, changed);
        notes.setOpaque(false);
        money.setOpaque(false);
        JPanel left = new JPanel(new FormLayout("insets 0, gap 0, fillx, wrap", "[0::,grow,fill]"));
        left.setOpaque(false);
        left.add(finding, "growx, wmin 0");
        left.add(Lettering.line(texts.get("season.switches"), Styles.FIELD_LABEL), "gaptop 12");
        left.add(boxes, "gaptop 2, growx, wmin 0");
        left.add(notes, "growx, gaptop 10");
        sheet.add(left, "aligny top, growx");
        sheet.add(money, "aligny top");
    }

    Sheet component() {
        return sheet;
    }

    SwitchBoxes boxes() {
        return boxes;
    }

    void show(SeasonLines lines, Texts texts) {
        finding.setText(lines.finding());
        boxes.show(lines.asked().switches());
        notes.removeAll();
        lines.notes().forEach(said -> {
            JTextArea note = Lettering.paragraph(said, Styles.NOTE);
            note.setToolTipText(texts.get("money.rests.tip"));
            notes.add(note, "growx, wmin 0");
        });
        money.removeAll();
        money.add(Lettering.line(texts.get("season.money"), Styles.SECTION));
        money.add(Lettering.figure(lines.currency(), Styles.NOTE), "alignx right");
        for (MoneyLine line : lines.money()) {
            money.add(new Hairline(), "span, growx");
            String style = line.within() ? Styles.NOTE : Styles.FIELD_LABEL;
            money.add(Lettering.line(line.label(), style), line.within() ? "gapleft 14" : "");
            money.add(Lettering.figure(line.amount(), line.within() ? Styles.NOTE : Styles.STRONG), "alignx right");
        }
        sheet.revalidate();
        sheet.repaint();
    }
}
