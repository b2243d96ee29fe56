package witnessmark.desktop.sheets;

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

/** The foot of a sheet: which fields need a look, and the buttons. */
final class SheetFoot extends JPanel {
    private final JPanel look = new JPanel(new MigLayout("insets 0, gap 6", "[]", "[]"));
    private final JLabel draft = Lettering.cutLine(" ", Styles.NOTE);
    private List<String> shown = List.of();

    /** @param buttons in order, the main one last */
    SheetFoot(List<JButton> buttons) {
        super(new MigLayout(
                "insets 0, gap 8, fillx, hidemode 3",
                "[0::,grow,fill]" + "[]".repeat(buttons.size()),
                "[32::,center]"));
        setOpaque(false);
        look.setOpaque(false);
        look.setVisible(false);
        JPanel left = new JPanel(new MigLayout("insets 0, gap 0, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        left.setOpaque(false);
        left.add(look, "wmin 0");
        left.add(draft, "wmin 0");
        add(left, "wmin 0");
        buttons.forEach(button -> add(button));
    }

    /** Says what became of the draft. */
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
        if (!names.isEmpty()) {
            look.add(Lettering.line(heading, Styles.STOP));
        }
        for (int i = 0; i < names.size(); i++) {
            int at = i;
            look.add(Buttons.link(Caption.of(names.get(i)), () -> goTo.accept(at)));
        }
        revalidate();
        repaint();
    }
}
