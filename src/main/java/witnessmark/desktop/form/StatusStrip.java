package witnessmark.desktop.form;

import javax.accessibility.AccessibleContext;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** What happened last, in one sentence, and one thing that can be done about it. Screen readers are told. */
public final class StatusStrip extends JPanel {
    private final JTextArea words = Lettering.paragraph("", Styles.NOTE);
    private final JTextArea working = Lettering.paragraph("", Styles.ECHO);

    public StatusStrip(String name) {
        super(new MigLayout("insets 0, gap 0, fillx, hidemode 3", "[0::,grow,fill]"));
        setOpaque(false);
        getAccessibleContext().setAccessibleName(name);
        working.setVisible(false);
        add(working, "wmin 0, wrap");
        add(words, "wmin 0, wrap");
    }

    /** @param way what can be done, for example take it back; {@code null} for nothing */
    public void show(String sentence, @Nullable JButton way) {
        AccessibleContext context = getAccessibleContext();
        words.setText(sentence);
        while (getComponentCount() > 2) {
            remove(2);
        }
        if (way != null) {
            add(way, "gapleft -8");
        }
        context.setAccessibleDescription(sentence);
        revalidate();
        repaint();
    }

    /** What is being done and not done yet; empty when nothing is. */
    public void working(String what) {
        if (!what.equals(working.getText())) {
            working.setText(what);
            working.setVisible(!what.isEmpty());
            revalidate();
            repaint();
        }
    }

    public String sentence() {
        return words.getText();
    }
}
