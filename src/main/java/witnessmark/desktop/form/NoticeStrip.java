package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Graphics;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** A quiet strip across a page or the window: a sentence and what can be done about it. Hidden while it has none. */
public final class NoticeStrip extends JPanel {
    private static final String ROOMY = "insets 5 18 6 18, fillx";
    private static final String LOW = "insets 1 18 2 18, fillx";

    private final JTextArea words = Lettering.paragraph("", Styles.FIELD_LABEL);
    private final JPanel buttons = new JPanel(new FormLayout("insets 0, gap 8"));

    public NoticeStrip() {
        super(new FormLayout(ROOMY, "[0::,grow,fill]14[]", "[center]"));
        Styles.as(Styles.NOTICE, this);
        buttons.setOpaque(false);
        add(words, "wmin 0");
        add(buttons);
        setVisible(false);
    }

    /** Whether there is little height for it. */
    public void low(boolean yes) {
        ((FormLayout) getLayout()).setLayoutConstraints(yes ? LOW : ROOMY);
        revalidate();
    }

    public void show(String sentence, List<? extends AbstractButton> ways) {
        words.setText(sentence);
        buttons.removeAll();
        ways.forEach(buttons::add);
        setVisible(true);
        revalidate();
    }

    /**
     * Shows all of these sentences that are not empty, each once and on a line of its own; hidden when there is none.
     *
     * @param ways asked only when something else is said than before
     */
    public void say(List<String> sentences, Supplier<List<? extends AbstractButton>> ways) {
        String all = sentences.stream()
                .filter(sentence -> !sentence.isEmpty())
                .distinct()
                .collect(Collectors.joining("\n"));
        if (all.isEmpty()) {
            dismiss();
        } else if (!all.equals(sentence())) {
            show(all, ways.get());
        }
    }

    public void dismiss() {
        setVisible(false);
    }

    /** The sentence shown, empty when hidden. */
    public String sentence() {
        return isVisible() ? words.getText() : "";
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        int line = Math.max(1, UIScale.scale(1));
        g.setColor(Palette.RULE.colour());
        g.fillRect(0, getHeight() - line, getWidth(), line);
    }
}
