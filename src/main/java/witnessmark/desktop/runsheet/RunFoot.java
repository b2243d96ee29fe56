package witnessmark.desktop.runsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;

/** The foot of a form: which fields need a look, what became of the draft, and the buttons. */
final class RunFoot extends JPanel {
    private final JPanel look = new JPanel(new MigLayout("insets 0, gap 6", "[]", "[]"));
    private final JLabel about = Lettering.cutLine("", Styles.NOTE);
    private final JLabel draft = Lettering.cutLine("", Styles.NOTE);
    private List<String> shown = List.of();

    /** @param buttons in order, the main one last */
    RunFoot(List<JButton> buttons) {
        super(new MigLayout(
                "insets 0, gap 8, fillx, hidemode 3",
                "[0::,grow,fill]" + "[]".repeat(buttons.size()),
                "[32::,center]"));
        setOpaque(false);
        look.setOpaque(false);
        look.setVisible(false);
        JPanel left = new JPanel(new MigLayout("insets 0, gap 0, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        left.setOpaque(false);
        about.setVisible(false);
        left.add(look, "wmin 0");
        left.add(about, "wmin 0");
        left.add(draft, "wmin 0");
        add(left, "wmin 0");
        buttons.forEach(button -> add(button));
    }

    /** A line that stays, above what is said of the draft. */
    void about(String line) {
        about.setText(line);
        about.setToolTipText(line);
        about.setVisible(!line.isEmpty());
    }

    void draft(String line) {
        draft.setText(line.isEmpty() ? " " : line);
        draft.setToolTipText(line.isEmpty() ? null : line);
    }

    /**
     * Names the fields that need a look, each a link to it.
     *
     * @param heading how many there are, already worded
     * @param names of the fields, in order; nothing is shown when there are none
     */
    void look(String heading, List<String> names, Consumer<Integer> goTo) {
        if (shown.equals(names)) {
            return;
        }
        shown = List.copyOf(names);
        look.removeAll();
        look.setVisible(!names.isEmpty());
        List<JButton> links = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            int at = i;
            links.add(Buttons.link(Caption.of(names.get(i)), () -> goTo.accept(at)));
        }
        look.add(Lettering.line(heading, Styles.STOP));
        links.forEach(link -> look.add(link));
        revalidate();
        repaint();
    }
}
