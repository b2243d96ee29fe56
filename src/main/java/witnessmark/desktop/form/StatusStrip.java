package witnessmark.desktop.form;

import javax.accessibility.AccessibleContext;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;

/** What happened last, in one sentence, and one thing that can be done about it. Screen readers are told. */
public final class StatusStrip extends JPanel {
    /** The longest sentence of our own, with names as people give them, stays whole. */
    private static final int LONGEST = 300;

    private static final int END = 100;

    private final JTextArea words = Lettering.paragraph("", Styles.NOTE);
    private final JTextArea working = Lettering.paragraph("", Styles.ECHO);
    private String said = "";
    private boolean wide;

    public StatusStrip(String name) {
        super(new FormLayout("insets 0, gap 0, fillx, hidemode 3", "[0::,grow,fill]"));
        setOpaque(false);
        getAccessibleContext().setAccessibleName(name);
        working.setVisible(false);
        words.setVisible(false); // nothing has happened yet, and nothing takes room
        add(working, "wmin 0, wrap");
        add(words, "wmin 0, wrap");
    }

    /** Whether what can be done stands beside the sentence, in a wide strip, or under it. */
    public void wide(boolean yes) {
        wide = yes;
        FormLayout layout = (FormLayout) getLayout();
        layout.setColumnConstraints(yes ? "[0::,grow,fill]14[]" : "[0::,grow,fill]");
        layout.setComponentConstraints(working, yes ? "span, wmin 0, wrap" : "wmin 0, wrap");
        layout.setComponentConstraints(words, yes ? "wmin 0" : "wmin 0, wrap");
        if (getComponentCount() > 2) {
            layout.setComponentConstraints(getComponent(2), placeOfWay());
        }
        revalidate();
    }

    private String placeOfWay() {
        return wide ? "" : "gapleft -8";
    }

    /** @param way what can be done, for example take it back; {@code null} for nothing */
    public void show(String sentence, @Nullable JButton way) {
        AccessibleContext context = getAccessibleContext();
        said = sentence;
        String shown = cut(sentence);
        words.setText(shown);
        words.setVisible(!shown.isEmpty());
        words.setToolTipText(shown.equals(sentence) ? null : sentence);
        while (getComponentCount() > 2) {
            remove(2);
        }
        if (way != null) {
            add(way, placeOfWay());
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

    /** What happened, in full. */
    public String sentence() {
        return said;
    }

    /** A sentence made very long by a name in it loses its middle; its end says what happened. */
    private static String cut(String sentence) {
        return sentence.length() <= LONGEST
                ? sentence
                : sentence.substring(0, LONGEST - END).strip()
                        + "…"
                        + sentence.substring(sentence.length() - END).strip();
    }
}
