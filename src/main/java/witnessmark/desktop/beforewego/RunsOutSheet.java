package witnessmark.desktop.beforewego;

import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamIcon;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** Where it runs out, run by run: only looked at; what is in it stands in the rows above as well. */
final class RunsOutSheet {
    private final Texts texts;
    private final StateWords states;
    private final JPanel panel = new JPanel();

    RunsOutSheet(Texts texts) {
        this.texts = texts;
        this.states = new StateWords(texts);
        panel.setOpaque(false);
    }

    JPanel component() {
        return panel;
    }

    void show(RunsOutLines lines) {
        panel.removeAll();
        panel.setVisible(lines.any());
        panel.setLayout(new FormLayout(
                "insets 0, gap 10 0, fillx, hidemode 3",
                "[64!]" + "[0::,grow,fill]".repeat(Math.max(1, lines.runs().size()))));
        panel.add(
                Lettering.line(texts.get("beforewego.runsOut"), Styles.SECTION),
                "span, growx, w 0:0:, gaptop 14, gapbottom 6, wrap");
        panel.add(new JLabel());
        for (int i = 0; i < lines.runs().size(); i++) {
            panel.add(
                    cut(lines.runs().get(i), Styles.NOTE),
                    "wmin 0" + end(i, lines.runs().size()));
        }
        for (RunsOutLines.Row car : lines.cars()) {
            panel.add(new Hairline(), "span, growx, gaptop 3, gapbottom 3, wrap");
            panel.add(Lettering.line(car.car(), Styles.ROW_TITLE), "aligny top");
            for (int i = 0; i < car.cells().size(); i++) {
                panel.add(
                        cell(car.cells().get(i)),
                        "wmin 0, aligny top" + end(i, car.cells().size()));
            }
        }
        panel.revalidate();
    }

    private static String end(int at, int of) {
        return at == of - 1 ? ", wrap" : "";
    }

    private JPanel cell(List<RunsOutLines.Cell> marks) {
        JPanel cell = new JPanel(new FormLayout("insets 0, gap 4 1, fillx", "[24!][0::,grow,fill]"));
        cell.setOpaque(false);
        for (RunsOutLines.Cell mark : marks) {
            JLabel icon = new JLabel(new SeamIcon(mark.state()));
            icon.getAccessibleContext().setAccessibleName(states.of(mark.state()));
            cell.add(icon);
            JLabel words = cut(mark.words(), Styles.NOTE);
            words.setToolTipText(mark.words());
            cell.add(words, "wmin 0, wrap");
        }
        return cell;
    }

    private static JLabel cut(String words, String style) {
        JLabel label = Lettering.line(words, style);
        label.putClientProperty(Lettering.MAY_BE_CUT, true);
        return label;
    }
}
